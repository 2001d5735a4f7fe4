package gudgeon.bench.checks;

import static gudgeon.bench.checks.Computation.one;

import gudgeon.core.deciding.LogNormal;
import gudgeon.core.deciding.Quantile;
import gudgeon.core.deciding.Replacement;
import gudgeon.core.deciding.ThreePoint;
import gudgeon.core.deciding.Weibull;
import java.util.Arrays;
import java.util.Map;

/** Lives, renewals and estimates by three points. */
final class DecidingFunctions {
    private DecidingFunctions() {}

    static void into(Map<String, Computation> all) {
        renewals(all);
        lives(all);
        all.put("pert_mean", one(args -> threePoint(args).mean()));
        all.put("pert_sd", one(args -> threePoint(args).standardDeviation()));
        all.put("sum_of_means", one(args -> Arrays.stream(args.numbers("means")).sum()));
        all.put(
                "root_sum_square",
                one(args -> Math.sqrt(Arrays.stream(args.numbers("values"))
                        .map(value -> value * value)
                        .sum())));
    }

    private static void renewals(Map<String, Computation> all) {
        all.put("age_replacement_optimum", one(args -> replacement(args).bestAge()));
        all.put(
                "age_replacement_cost_rate",
                one(args -> replacement(args).costRate(replacement(args).bestAge())));
        all.put(
                "run_to_failure_cost_rate",
                one(args -> new Replacement(life(args), args.number("cost_failure"), args.number("cost_failure"))
                        .runToFailureRate()));
        all.put(
                "minimal_repair_replacement_optimum",
                one(args -> Replacement.bestInterval(
                        life(args), args.number("cost_replacement"), args.number("cost_minimal_repair"))));
        all.put(
                "minimal_repair_cost_rate",
                one(args -> Replacement.intervalRate(
                        life(args), args.number("cost_replacement"), args.number("cost_minimal_repair"))));
    }

    private static void lives(Map<String, Computation> all) {
        all.put("weibull_quantile", one(args -> life(args).quantile(args.number("p"))));
        all.put("weibull_from_quantiles_shape", one(args -> believed(args).shape()));
        all.put("weibull_from_quantiles_scale", one(args -> believed(args).scale()));
        all.put("weibull_from_quantiles_mean", one(args -> believed(args).mean()));
        all.put("lognormal_from_quantiles_mu", one(args -> logNormal(args).mu()));
        all.put("lognormal_from_quantiles_sigma", one(args -> logNormal(args).sigma()));
        all.put("lognormal_from_quantiles_mean", one(args -> logNormal(args).mean()));
    }

    private static Weibull life(Args args) {
        return new Weibull(args.number("shape"), args.number("scale"));
    }

    private static Weibull believed(Args args) {
        return Weibull.from(quantile(args, 1), quantile(args, 2));
    }

    private static LogNormal logNormal(Args args) {
        return LogNormal.from(quantile(args, 1), quantile(args, 2));
    }

    private static Quantile quantile(Args args, int number) {
        return new Quantile(args.number("p" + number), args.number("x" + number));
    }

    private static Replacement replacement(Args args) {
        return new Replacement(life(args), args.number("cost_preventive"), args.number("cost_failure"));
    }

    private static ThreePoint threePoint(Args args) {
        return new ThreePoint(args.number("low"), args.number("mode"), args.number("high"));
    }
}
