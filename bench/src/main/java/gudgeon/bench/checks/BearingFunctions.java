package gudgeon.bench.checks;

import static gudgeon.bench.checks.Computation.one;

import gudgeon.core.bearing.OilFilm;
import gudgeon.core.bearing.PlainBearing;
import gudgeon.core.bearing.PressFit;
import gudgeon.core.bearing.ToleranceZone;
import gudgeon.core.bearing.ToleranceZone.Fit;
import gudgeon.core.bearing.ToleranceZone.Limits;
import java.util.Map;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;

/** Limits and fits, plain bearings, press fits. */
final class BearingFunctions {
    private static final double M_PER_INCH = 0.0254;
    private static final double N_PER_LBF = 4.4482216152605;
    private static final double PA_PER_PSI = N_PER_LBF / (M_PER_INCH * M_PER_INCH);
    private static final double W_PER_HP = 550 * 0.3048 * N_PER_LBF;

    private BearingFunctions() {}

    static void into(Map<String, Computation> all) {
        fits(all);
        films(all);
        loaded(all);
        petroff(all);
        press(all);
        all.put("ring_end_gap", one(args -> args.number("bore_in") * args.number("gap_in_per_in")));
    }

    private static void fits(Map<String, Computation> all) {
        all.put("limit_deviation", args -> {
            Limits limits = limits(args);
            return new double[] {limits.upper_um(), limits.lower_um()};
        });
        all.put("limits_of_size", args -> {
            Limits limits = limits(args);
            double nominal = args.number("nominal_mm");
            return new double[] {nominal + limits.upper_um() / 1000, nominal + limits.lower_um() / 1000};
        });
        all.put("fit_clearance", args -> {
            Fit fit = fit(args);
            return new double[] {fit.least_um(), fit.most_um()};
        });
        all.put("fit_interference", args -> {
            Fit fit = fit(args);
            return new double[] {-fit.most_um(), -fit.least_um()};
        });
    }

    private static Limits limits(Args args) {
        return ToleranceZone.parse(args.text("zone")).limits(args.number("nominal_mm"));
    }

    private static Fit fit(Args args) {
        return Fit.of(
                ToleranceZone.parse(args.text("hole")),
                ToleranceZone.parse(args.text("shaft")),
                args.number("nominal_mm"));
    }

    private static void films(Map<String, Computation> all) {
        film(all, "sommerfeld", OilFilm::sommerfeld);
        film(all, "attitude_angle", OilFilm::attitude_deg);
        film(all, "friction_variable", OilFilm::frictionVariable);
        film(all, "flow_variable", OilFilm::flow);
        film(all, "side_flow_ratio", OilFilm::sideFlowRatio);
        film(all, "pressure_ratio", OilFilm::pressureRatio);
    }

    private static void film(Map<String, Computation> all, String name, ToDoubleFunction<OilFilm> part) {
        all.put(
                "journal_bearing_" + name,
                one(args -> part.applyAsDouble(
                        OilFilm.at(args.number("length_to_diameter"), args.number("eccentricity_ratio")))));
    }

    private static void loaded(Map<String, Computation> all) {
        all.put("sommerfeld_number", one(args -> bearing(args).sommerfeld()));
        loaded(all, "operating_eccentricity_ratio", (bearing, film) -> film.eccentricityRatio());
        loaded(all, "minimum_film_ratio", (bearing, film) -> film.leastFilmRatio());
        loaded(all, "minimum_film_thickness", (bearing, film) -> bearing.leastFilm_m(film) / M_PER_INCH);
        loaded(all, "journal_bearing_friction_coefficient", PlainBearing::friction);
        loaded(
                all,
                "journal_bearing_friction_torque",
                (bearing, film) -> bearing.torque_Nm(film) / (N_PER_LBF * M_PER_INCH));
    }

    private static void loaded(
            Map<String, Computation> all, String name, ToDoubleBiFunction<PlainBearing, OilFilm> part) {
        all.put(name, one(args -> {
            PlainBearing bearing = bearing(args);
            return part.applyAsDouble(bearing, bearing.film());
        }));
    }

    private static PlainBearing bearing(Args args) {
        return new PlainBearing(
                args.number("viscosity_microreyn") * 1e-6 * PA_PER_PSI,
                args.number("speed_rev_per_s"),
                args.number("load_lbf") * N_PER_LBF,
                args.number("radius_in") * M_PER_INCH,
                args.number("radial_clearance_in") * M_PER_INCH,
                args.number("length_in") * M_PER_INCH);
    }

    private static void petroff(Map<String, Computation> all) {
        all.put("petroff_friction_force", one(args -> force_lbf(args)));
        all.put("petroff_torque", one(args -> force_lbf(args) * args.number("diameter_in") / 2));
        all.put("petroff_power", one(args -> {
            double speed_m_per_s = Math.PI * args.number("diameter_in") * M_PER_INCH * args.number("speed_rpm") / 60;
            return force_lbf(args) * N_PER_LBF * speed_m_per_s / W_PER_HP;
        }));
        all.put("petroff_friction_coefficient", one(args -> force_lbf(args) / args.number("load_lbf")));
        all.put(
                "bearing_friction_coefficient",
                one(args -> args.number("friction_force_lbf")
                        / (args.number("mean_pressure_psi") * args.number("length_in") * args.number("diameter_in"))));
    }

    private static double force_lbf(Args args) {
        PlainBearing bearing = new PlainBearing(
                args.number("viscosity_microreyn") * 1e-6 * PA_PER_PSI,
                args.number("speed_rpm") / 60,
                args.number("load_lbf", 1) * N_PER_LBF,
                args.number("diameter_in") * M_PER_INCH / 2,
                args.number("diametral_clearance_in") * M_PER_INCH / 2,
                args.number("length_in") * M_PER_INCH);
        return bearing.petroffForce_N() / N_PER_LBF;
    }

    private static void press(Map<String, Computation> all) {
        all.put("press_fit_pressure", one(args -> press(args).pressure_MPa()));
        all.put("press_fit_axial_force", one(args -> press(args).axialForce_N()));
        all.put("press_fit_torque", one(args -> press(args).torque_Nm()));
        all.put("press_fit_hub_hoop_stress", one(args -> press(args).hubHoop_MPa()));
    }

    private static PressFit press(Args args) {
        return new PressFit(
                args.number("shaft_d_mm"),
                args.number("shaft_bore_mm"),
                args.number("hub_od_mm"),
                args.number("diametral_interference_mm"),
                args.number("length_mm"),
                args.number("friction"),
                args.number("modulus_GPa"));
    }
}
