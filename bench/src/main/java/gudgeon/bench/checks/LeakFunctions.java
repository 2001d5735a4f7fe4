package gudgeon.bench.checks;

import static gudgeon.bench.checks.Computation.one;

import gudgeon.core.finding.LeakFlow;
import java.util.Arrays;
import java.util.Map;

/** Compressible flow, the leak-down tester, rules for compression readings. */
final class LeakFunctions {
    private static final double M_PER_INCH = 0.0254;
    private static final double PA_PER_PSI = 4.4482216152605 / (M_PER_INCH * M_PER_INCH);

    private static final double STANDARD_GRAVITY_FT_PER_S2 = 9.80665 / 0.3048;

    /** Bore from which the tester takes the larger orifice: FAA AC 43.13-1B, chapter 8. */
    private static final double LARGE_BORE_IN = 5.00;

    private LeakFunctions() {}

    static void into(Map<String, Computation> all) {
        tester(all);
        rules(all);
        gas(all);
        flows(all);
    }

    private static void tester(Map<String, Computation> all) {
        all.put("tester_orifice_diameter", one(args -> positive(args, "bore_in") < LARGE_BORE_IN ? 0.040 : 0.060));
        all.put("tester_orifice_length", one(args -> positive(args, "bore_in") > 0 ? 0.250 : Double.NaN));
        all.put("tester_orifice_approach_angle", one(args -> positive(args, "bore_in") > 0 ? 60 : Double.NaN));
        all.put(
                "pressure_loss_fraction",
                one(args -> 1 - args.number("cylinder_psi") / positive(args, "regulator_psi")));
        all.put(
                "choke_onset_gauge_pressure",
                one(args -> (args.number("inlet_psig") + args.number("atmosphere_psia")) * args.number("critical_ratio")
                        - args.number("atmosphere_psia")));
    }

    private static void rules(Map<String, Computation> all) {
        all.put("compression_lowest_to_highest", one(LeakFunctions::lowestToHighest));
        all.put(
                "compression_lowest_to_highest_pass",
                one(args -> lowestToHighest(args) >= args.number("min_ratio") ? 1 : 0));
        all.put("compression_mean_limit", one(LeakFunctions::meanLimit));
        all.put(
                "compression_mean_rule_pass",
                one(args -> Arrays.stream(args.numbers("readings_psi")).allMatch(reading -> reading > meanLimit(args))
                        ? 1
                        : 0));
    }

    private static double lowestToHighest(Args args) {
        double[] readings = readings(args);
        return Arrays.stream(readings).min().orElseThrow()
                / Arrays.stream(readings).max().orElseThrow();
    }

    private static double meanLimit(Args args) {
        return (1 - args.number("max_fraction_below_mean"))
                * Arrays.stream(readings(args)).average().orElseThrow();
    }

    private static double[] readings(Args args) {
        double[] readings = args.numbers("readings_psi");
        if (readings.length == 0) {
            throw new IllegalArgumentException("\"readings_psi\" is empty");
        }
        return readings;
    }

    private static void gas(Map<String, Computation> all) {
        all.put("critical_pressure_ratio", one(args -> LeakFlow.criticalRatio(gamma(args))));
        all.put("critical_pressure", one(args -> args.number("p0_Pa") * LeakFlow.criticalRatio(gamma(args))));
        all.put(
                "flow_is_choked",
                one(args -> args.number("p_down_kPa") / positive(args, "p_up_kPa") <= LeakFlow.criticalRatio(gamma(args))
                        ? 1
                        : 0));
        all.put("critical_flow_function", one(args -> LeakFlow.flowFunction(0, gamma(args))));
        all.put(
                "stagnation_pressure",
                one(args -> 1000
                        * args.number("p_kPa")
                        * Math.pow(
                                args.number("stagnation_temperature_K") / positive(args, "temperature_K"),
                                gamma(args) / (gamma(args) - 1))));
        all.put(
                "isentropic_temperature",
                one(args -> args.number("T1_K")
                        * Math.pow(positive(args, "pressure_ratio"), (gamma(args) - 1) / gamma(args))));
        all.put("polytropic_exponent", one(args -> {
            double share = positive(args, "polytropic_efficiency");
            return gamma(args) * share / (1 - gamma(args) * (1 - share));
        }));
        all.put("isentropic_efficiency", one(args -> {
            double ratio = args.number("p2_Pa") / positive(args, "p1_Pa");
            double power = (gamma(args) - 1) / gamma(args);
            return (Math.pow(ratio, power) - 1)
                    / (Math.pow(ratio, power / positive(args, "polytropic_efficiency")) - 1);
        }));
        all.put(
                "air_discharge_velocity",
                one(args -> Math.sqrt(2
                        * STANDARD_GRAVITY_FT_PER_S2
                        * args.number("coefficient_ft_per_R")
                        * args.number("temperature_R")
                        * (1 - Math.pow(args.number("pressure_ratio"), args.number("exponent"))))));
    }

    private static void flows(Map<String, Computation> all) {
        all.put("orifice_mass_flow", one(args -> 1000 * orificeFlow_kg_per_s(args)));
        all.put("equivalent_leak_diameter", one(args -> {
            double cylinder_Pa = absolute_Pa(args, "cylinder_psig");
            double ambient_Pa = args.number("atmosphere_psia") * PA_PER_PSI;
            double perArea = LeakFlow.massFlow(
                    1,
                    cylinder_Pa,
                    ambient_Pa,
                    args.number("temperature_K"),
                    args.number("gas_constant_J_per_kgK"),
                    gamma(args));
            double effective_m2 = orificeFlow_kg_per_s(args) / perArea;
            return 1000 * Math.sqrt(4 * effective_m2 / (Math.PI * positive(args, "discharge_coefficient")));
        }));
        all.put(
                "iso6358_flow",
                one(args -> LeakFlow.pneumaticFlow(
                        args.number("sonic_conductance_dm3_per_s_bar"),
                        args.number("p1_bar"),
                        args.number("critical_ratio"),
                        args.number("pressure_ratio"),
                        args.number("temperature_ratio_T0_T1"))));
    }

    private static double orificeFlow_kg_per_s(Args args) {
        double d_m = args.number("orifice_d_in") * M_PER_INCH;
        return LeakFlow.massFlow(
                args.number("discharge_coefficient") * Math.PI / 4 * d_m * d_m,
                absolute_Pa(args, "regulator_psig"),
                absolute_Pa(args, "cylinder_psig"),
                args.number("temperature_K"),
                args.number("gas_constant_J_per_kgK"),
                gamma(args));
    }

    private static double absolute_Pa(Args args, String gauge) {
        return (args.number(gauge) + args.number("atmosphere_psia")) * PA_PER_PSI;
    }

    private static double gamma(Args args) {
        double gamma = args.number("gamma");
        if (!(gamma > 1 && gamma < 2)) {
            throw new IllegalArgumentException("\"gamma\" is " + gamma + "; it must lie between 1 and 2");
        }
        return gamma;
    }

    private static double positive(Args args, String key) {
        double value = args.number(key);
        if (!(value > 0)) {
            throw new IllegalArgumentException("\"" + key + "\" is " + value + "; it must be above 0");
        }
        return value;
    }
}
