package gudgeon.core.measuring;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.ToDoubleFunction;

/**
 * A result's distribution by drawing from its inputs. Same seed, same answer. Source: [JCGM101].
 *
 * @param mean of the drawn results
 * @param standardDeviation of the drawn results
 * @param low below it lie 2.5 % of them
 * @param high above it lie 2.5 % of them
 * @param trials how many were drawn
 */
public record MonteCarlo(double mean, double standardDeviation, double low, double high, int trials) {
    /** Enough for two figures of the standard uncertainty; Source: [JCGM101] 7.2.2 has a million for one or two of the ends. */
    public static final int TRIALS = 100_000;

    /**
     * Draws.
     *
     * @param inputs each with its budget; a source that several share is drawn once for all
     * @param model the result from the inputs' values, in their order
     * @param seed any number; kept with the answer by those who want it again
     */
    public static MonteCarlo of(List<Estimate> inputs, ToDoubleFunction<double[]> model, long seed, int trials) {
        if (trials < 1000) {
            throw new IllegalArgumentException("fewer than 1000 trials say little, not " + trials);
        }
        Map<Source, Integer> index = new LinkedHashMap<>();
        for (Estimate input : inputs) {
            input.budget().contributions().forEach(line -> index.putIfAbsent(line.source(), index.size()));
        }
        double[][] sensitivities = new double[inputs.size()][index.size()];
        Contribution[] sources = new Contribution[index.size()];
        for (int i = 0; i < sensitivities.length; i++) {
            for (Contribution line : inputs.get(i).budget().contributions()) {
                int at = index.getOrDefault(line.source(), 0);
                sources[at] = line;
                sensitivities[i][at] = line.signed();
            }
        }
        Random random = new Random(seed);
        double[] results = new double[trials];
        double[] values = new double[inputs.size()];
        double[] drawn = new double[sources.length];
        for (int trial = 0; trial < trials; trial++) {
            for (int s = 0; s < drawn.length; s++) {
                drawn[s] = draw(sources[s], random);
            }
            for (int i = 0; i < values.length; i++) {
                values[i] = inputs.get(i).value();
                for (int s = 0; s < drawn.length; s++) {
                    values[i] += sensitivities[i][s] * drawn[s];
                }
            }
            results[trial] = model.applyAsDouble(values);
        }
        return summary(results);
    }

    /**
     * Whether first order does: both ends of its interval lie within half a unit of the first significant figure of its
     * standard uncertainty from those drawn, scatter of the draw allowed for. Source: [JCGM101] 8.1, with one figure.
     */
    public boolean agreesWith(Estimate firstOrder) {
        double uncertainty = firstOrder.standardUncertainty();
        double expanded = firstOrder.expanded();
        double tolerance = uncertainty == 0 ? 0 : 0.5 * Math.pow(10, Math.floor(Math.log10(uncertainty)));
        double noise = 8 * standardDeviation / Math.sqrt(trials);
        return Math.abs(firstOrder.value() - expanded - low) <= tolerance + noise
                && Math.abs(firstOrder.value() + expanded - high) <= tolerance + noise;
    }

    private static MonteCarlo summary(double[] results) {
        double sum = 0;
        for (double result : results) {
            sum += result;
        }
        double mean = sum / results.length;
        double squares = 0;
        for (double result : results) {
            squares += (result - mean) * (result - mean);
        }
        double[] sorted = results.clone();
        Arrays.sort(sorted);
        int tail = (int) Math.round(0.025 * sorted.length);
        return new MonteCarlo(
                mean,
                Math.sqrt(squares / (results.length - 1)),
                sorted[tail],
                sorted[sorted.length - 1 - tail],
                results.length);
    }

    /** A value of standard uncertainty one (for few degrees of freedom: a Student's t), spread as the line says. */
    private static double draw(Contribution line, Random random) {
        return switch (line.spread()) {
            case RECTANGULAR -> Spread.RECTANGULAR.halfWidth(1) * (2 * random.nextDouble() - 1);
            case TRIANGULAR -> Spread.TRIANGULAR.halfWidth(1) * triangular(random);
            case ARCSINE -> Spread.ARCSINE.halfWidth(1) * Math.sin(2 * Math.PI * random.nextDouble());
            case NORMAL, NORMAL_95 -> student(line.degreesOfFreedom(), random);
        };
    }

    private static double triangular(Random random) {
        double first = random.nextDouble();
        return first - random.nextDouble();
    }

    private static double student(double freedom, Random random) {
        double value = random.nextGaussian();
        if (freedom > 200) {
            return value;
        }
        int whole = (int) Math.max(1, Math.floor(freedom));
        double squares = 0;
        for (int i = 0; i < whole; i++) {
            double z = random.nextGaussian();
            squares += z * z;
        }
        return value / Math.sqrt(squares / whole);
    }
}
