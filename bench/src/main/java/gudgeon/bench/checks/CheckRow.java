package gudgeon.bench.checks;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One row of a table of outside values: what is computed from what, what ought to come out, and how near.
 *
 * @param place file name and line, for messages
 * @param id the row's name, for people only
 * @param source where the value stands
 * @param provenance how the value came into the table: read, computed, memory, common practice
 * @param function the name of the computation; {@code none:why} where the row is no computation
 * @param args its arguments
 * @param expected the value, or the values in order
 * @param absTol how far from it at most; empty when the tolerance is relative
 * @param relTol how far at most, as a share of the value
 */
record CheckRow(
        String place,
        String id,
        String source,
        String provenance,
        String function,
        Args args,
        double[] expected,
        OptionalDouble absTol,
        OptionalDouble relTol) {
    /** What became of a row. */
    enum Outcome {
        /** Computed, and near enough. */
        WITHIN,
        /** Computed, and not near enough. */
        BEYOND,
        /** No such function here, or its arguments were refused. */
        NOT_COMPUTED,
        /** The row is a rule, a definition, a formula: nothing to compute. */
        NO_COMPUTATION
    }

    /**
     * A row recomputed.
     *
     * @param row the row
     * @param outcome what became of it
     * @param deviation the largest difference, in units of the tolerance; not a number when nothing was computed
     * @param computed what came out
     * @param reason why nothing was computed
     */
    record Result(CheckRow row, Outcome outcome, double deviation, double[] computed, String reason) {}

    /** Computes the row by its function and its arguments alone, then compares. */
    Result result() {
        if (function.startsWith("none:")) {
            return new Result(this, Outcome.NO_COMPUTATION, Double.NaN, new double[0], function.substring(5));
        }
        Optional<Computation> computation = Functions.find(function);
        if (computation.isEmpty()) {
            return notComputed("no function " + function);
        }
        double[] computed;
        try {
            computed = computation.get().of(args);
        } catch (IllegalArgumentException | ArithmeticException e) {
            return notComputed(String.valueOf(e.getMessage()));
        }
        if (computed.length != expected.length) {
            return notComputed(computed.length + " values came out, " + expected.length + " are expected");
        }
        double deviation = 0;
        for (int i = 0; i < computed.length; i++) {
            deviation = Math.max(deviation, deviation(computed[i], expected[i]));
        }
        return new Result(this, deviation <= 1 ? Outcome.WITHIN : Outcome.BEYOND, deviation, computed, "");
    }

    private Result notComputed(String why) {
        return new Result(this, Outcome.NOT_COMPUTED, Double.NaN, new double[0], why);
    }

    private double deviation(double computed, double expected) {
        double tolerance = absTol.orElseGet(() -> relTol.orElse(0) * Math.abs(expected));
        double off = Math.abs(computed - expected);
        if (Double.isNaN(off)) {
            return Double.POSITIVE_INFINITY;
        }
        if (off == 0) {
            return 0;
        }
        return (off - 4 * Math.ulp(expected)) / tolerance;
    }

    @Override
    public String toString() {
        return place + " " + id + ": " + function + " = " + Arrays.toString(expected) + " (" + source + "; " + provenance + ")";
    }
}
