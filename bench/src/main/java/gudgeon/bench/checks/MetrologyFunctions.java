package gudgeon.bench.checks;

import static gudgeon.bench.checks.Computation.one;

import gudgeon.core.measuring.Budget;
import gudgeon.core.measuring.Contribution;
import gudgeon.core.measuring.Distributions;
import gudgeon.core.measuring.Expansion;
import gudgeon.core.measuring.InspectionRisk;
import gudgeon.core.measuring.LeastSquaresFit;
import gudgeon.core.measuring.Material;
import gudgeon.core.measuring.Sample;
import gudgeon.core.measuring.Source;
import gudgeon.core.measuring.Spread;
import gudgeon.core.measuring.TwoLimits;
import gudgeon.core.measuring.VarianceAnalysis;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import tools.jackson.databind.JsonNode;

/** Uncertainty, samples, fits, distributions, risks, expansion. */
final class MetrologyFunctions {
    private MetrologyFunctions() {}

    static void into(Map<String, Computation> all) {
        uncertainty(all);
        fits(all);
        samples(all);
        risks(all);
        expansion(all);
    }

    private static void uncertainty(Map<String, Computation> all) {
        all.put(
                "gum_estimate",
                one(args -> Formula.at(args.text("model"), values(args)).value()));
        all.put("gum_uncertainty_component", one(args -> component(args)));
        all.put("gum_combined_uncertainty", one(args -> budget(args).combined()));
        all.put(
                "gum_combined_uncertainty_second_order",
                one(args -> budget(args).combinedSecondOrder(secondDerivatives(args))));
        all.put("gum_effective_dof", one(args -> budget(args).effectiveDegreesOfFreedom()));
        all.put(
                "gum_expanded_uncertainty",
                one(args -> args.number("coverage_factor") * budget(args).combined()));
        all.put("gum_sample_estimate", one(args -> atMeans(args).value()));
        all.put("gum_sample_uncertainty", one(MetrologyFunctions::sampleUncertainty));
        all.put(
                "student_t_quantile",
                one(args -> Distributions.studentQuantile(args.number("dof"), args.number("upper_tail"))));
    }

    private static double component(Args args) {
        String name = args.text("component");
        if (!args.node("inputs").has(name)) {
            throw new IllegalArgumentException("\"component\" names no input: " + name);
        }
        return budget(args).component(Source.of(name));
    }

    private static Map<String, Double> values(Args args) {
        Map<String, Double> values = new LinkedHashMap<>();
        args.node("inputs").forEachEntry((name, input) -> values.put(name, number(name, input, "value", 0)));
        return values;
    }

    private static Budget budget(Args args) {
        List<Contribution> lines = new ArrayList<>();
        double[] slopes = allHaveSensitivity(args.node("inputs"))
                ? new double[0]
                : Formula.at(args.text("model"), values(args)).slopes();
        args.node("inputs").forEachEntry((name, input) -> {
            double sensitivity =
                    input.has("sensitivity") ? number(name, input, "sensitivity", 1) : slopes[lines.size()];
            double dof = number(name, input, "dof", Double.POSITIVE_INFINITY);
            lines.add(Contribution.of(Source.of(name), standardUncertainty(name, input), sensitivity, dof));
        });
        return new Budget(lines);
    }

    private static boolean allHaveSensitivity(JsonNode inputs) {
        boolean all = true;
        for (JsonNode input : inputs) {
            all &= input.has("sensitivity");
        }
        return all;
    }

    private static double standardUncertainty(String name, JsonNode input) {
        if (input.has("u")) {
            return number(name, input, "u", 0);
        }
        double halfWidth = number(name, input, "halfwidth", 0);
        String distribution = input.path("distribution").asString("rectangular");
        Spread spread = switch (distribution) {
            case "rectangular", "uniform" -> Spread.RECTANGULAR;
            case "arcsine", "u-shaped" -> Spread.ARCSINE;
            case "triangular" -> Spread.TRIANGULAR;
            default -> throw new IllegalArgumentException("\"" + distribution + "\" is no distribution of " + name);
        };
        return spread.standardUncertainty(halfWidth);
    }

    private static double number(String name, JsonNode input, String key, double otherwise) {
        JsonNode node = input.get(key);
        if (node == null || node.isNull()) {
            return otherwise;
        }
        if (!node.isNumber()) {
            throw new IllegalArgumentException("\"" + key + "\" of " + name + " is " + node + ", a number is needed");
        }
        return node.asDouble();
    }

    private static List<Budget.SecondDerivative> secondDerivatives(Args args) {
        List<Budget.SecondDerivative> terms = new ArrayList<>();
        for (JsonNode term : args.node("second_derivatives")) {
            terms.add(new Budget.SecondDerivative(
                    Source.of(term.get(0).asString()),
                    Source.of(term.get(1).asString()),
                    term.get(2).asDouble()));
        }
        return terms;
    }

    private static Map<String, Sample> pairedSamples(Args args) {
        Map<String, Sample> samples = new LinkedHashMap<>();
        args.node("samples").forEachEntry((name, list) -> samples.put(name, Sample.of(numbers(list))));
        return samples;
    }

    private static Formula.Worth atMeans(Args args) {
        Map<String, Double> means = new LinkedHashMap<>();
        pairedSamples(args).forEach((name, sample) -> means.put(name, sample.mean()));
        return Formula.at(args.text("model"), means);
    }

    private static double sampleUncertainty(Args args) {
        double[] slopes = atMeans(args).slopes();
        List<Sample> samples = List.copyOf(pairedSamples(args).values());
        double variance = 0;
        for (int i = 0; i < slopes.length; i++) {
            for (int j = 0; j < slopes.length; j++) {
                variance += slopes[i] * slopes[j] * samples.get(i).covarianceOfMeans(samples.get(j));
            }
        }
        return Math.sqrt(Math.max(0, variance));
    }

    private static double[] numbers(JsonNode list) {
        double[] numbers = new double[list.size()];
        for (int i = 0; i < numbers.length; i++) {
            if (!list.get(i).isNumber()) {
                throw new IllegalArgumentException(list.get(i) + " is no number");
            }
            numbers[i] = list.get(i).asDouble();
        }
        return numbers;
    }

    private static void fits(Map<String, Computation> all) {
        all.put("linear_fit_slope", one(line(fit -> fit.coefficient(1))));
        all.put("linear_fit_intercept", one(line(fit -> fit.coefficient(0))));
        all.put("linear_fit_slope_sd", one(line(fit -> fit.standardDeviation(1))));
        all.put("linear_fit_intercept_sd", one(line(fit -> fit.standardDeviation(0))));
        all.put("linear_fit_residual_ss", one(line(LeastSquaresFit::residualSquares)));
        all.put("linear_fit_residual_sd", one(line(LeastSquaresFit::residualStandardDeviation)));
        all.put("linear_fit_regression_ss", one(line(LeastSquaresFit::regressionSquares)));
        all.put("linear_fit_r2", one(line(LeastSquaresFit::rSquared)));
        all.put("linear_fit_prediction", one(args -> line(args).at(args.number("x_at"))));
        all.put("linear_fit_prediction_sd", one(args -> line(args).standardDeviationAt(args.number("x_at"))));
        all.put("linear_fit_intercept_slope_correlation", one(line(fit -> fit.correlation(0, 1))));
        all.put("multiple_fit_coefficient", one(args -> several(args).coefficient(args.whole("index"))));
        all.put("multiple_fit_coefficient_sd", one(args -> several(args).standardDeviation(args.whole("index"))));
        all.put("multiple_fit_residual_sd", one(args -> several(args).residualStandardDeviation()));
    }

    private static ToDoubleFunction<Args> line(ToDoubleFunction<LeastSquaresFit> value) {
        return args -> value.applyAsDouble(line(args));
    }

    private static LeastSquaresFit line(Args args) {
        return LeastSquaresFit.line(args.numbers("x"), args.numbers("y"), args.number("x_offset", 0));
    }

    private static LeastSquaresFit several(Args args) {
        return LeastSquaresFit.of(args.lists("x"), args.numbers("y"));
    }

    private static void samples(Map<String, Computation> all) {
        all.put("sample_mean", one(args -> sample(args).mean()));
        all.put("sample_sd", one(args -> sample(args).standardDeviation()));
        all.put("lag1_autocorrelation", one(args -> sample(args).lag1Autocorrelation()));
        all.put("anova_between_ss", one(args -> groups(args).betweenSquares()));
        all.put("anova_within_ss", one(args -> groups(args).withinSquares()));
        all.put("anova_f", one(args -> groups(args).f()));
        all.put("anova_residual_sd", one(args -> groups(args).residualStandardDeviation()));
        all.put("anova_r2", one(args -> groups(args).rSquared()));
    }

    private static Sample sample(Args args) {
        if (args.has("values")) {
            return Sample.of(args.numbers("values"));
        }
        List<Double> values = new ArrayList<>();
        for (JsonNode run : args.node("values_repeated")) {
            double[] cycle = numbers(run.get(1));
            for (int i = 0; i < run.get(0).asInt(); i++) {
                for (double value : cycle) {
                    values.add(value);
                }
            }
        }
        return Sample.of(values.stream().mapToDouble(Double::doubleValue).toArray());
    }

    private static VarianceAnalysis groups(Args args) {
        return VarianceAnalysis.of(args.lists("groups"));
    }

    /** Risks in per cent where the limits are given by the share of parts within them, as shares of one where by sigmas. */
    private static void risks(Map<String, Computation> all) {
        all.put("false_accept_probability", one(args -> unit(args) * risk(args).falseAccept()));
        all.put(
                "conditional_false_accept_probability",
                one(args -> unit(args) * risk(args).conditionalFalseAccept()));
        all.put("false_reject_probability", one(args -> unit(args) * risk(args).falseReject()));
        all.put("process_cpk", one(args -> limits(args, "").processCapability(args.number("mean"), args.number("sd"))));
        all.put(
                "out_of_limits_probability",
                one(args -> limits(args, "").beyond(args.number("mean"), args.number("sd"))));
        all.put("conformance_zone", args -> pair(limits(args, "_mm").conformanceZone(expanded(args))));
        all.put("nonconformance_limits", args -> pair(limits(args, "_mm").nonconformanceLimits(expanded(args))));
    }

    private static double unit(Args args) {
        return args.has("limit_in_sigma") ? 1 : 100;
    }

    private static InspectionRisk risk(Args args) {
        double limit = args.has("limit_in_sigma")
                ? args.number("limit_in_sigma")
                : InspectionRisk.limitHolding(args.number("in_tolerance_probability"));
        return InspectionRisk.of(limit, args.number("sigma_ratio"), args.number("guard_band_factor", 1));
    }

    private static TwoLimits limits(Args args, String unit) {
        return new TwoLimits(args.number("lower_limit" + unit), args.number("upper_limit" + unit));
    }

    private static double expanded(Args args) {
        return args.number("expanded_uncertainty_mm");
    }

    private static double[] pair(TwoLimits limits) {
        return new double[] {limits.lower(), limits.upper()};
    }

    private static void expansion(Map<String, Computation> all) {
        all.put(
                "expansion_coefficient",
                one(args -> Expansion.coefficient_per_K(
                        args.number("L0_m"), args.number("L1_m"), args.number("T0_K"), args.number("T1_K"))));
        all.put(
                "thermal_expansion_length",
                one(args -> 1000
                        * Expansion.growth_mm(
                                args.number("length_mm"), args.number("alpha_per_K"), args.number("delta_T_K"))));
        all.put("linear_expansion_coefficient", one(args -> 1e6 * coefficient(args)));
    }

    private static double coefficient(Args args) {
        Material material = Material.find(args.text("material"))
                .orElseThrow(() -> new IllegalArgumentException("no expansion known of " + args.text("material")));
        return switch (args.findText("bound").orElse("")) {
            case "" -> material.expansion_per_K();
            case "low" -> material.lowExpansion_per_K();
            case "high" -> material.highExpansion_per_K();
            default -> throw new IllegalArgumentException("\"bound\" is low or high");
        };
    }
}
