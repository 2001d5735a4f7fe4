package gudgeon.core.inference;

import java.util.ArrayList;
import java.util.List;

/**
 * Independent causes joined by noisy-OR. A finding stays away when its false alarm stays away and every cause lets it pass;
 * so findings that are absent are a product, and findings that are present a signed sum over their subsets. A cause may have
 * any number of states; state 0 need not be special. Cost: 2^(present) x causes x states. The signed sum loses digits when
 * what is present is very unlikely under every cause: about 2^present x 1e-16 of the chance of the rest. Source: [HECKERMAN].
 */
public final class Quickscore {
    /** More findings than this at once are refused; the table would not fit. */
    public static final int MOST_PRESENT = 20;

    private final int present;
    private final double[] leakOf;
    private final List<double[]> messages = new ArrayList<>();

    /**
     * @param presentFalseAlarms for each finding that is present, the chance that it is there without any cause
     * @param absentFalseAlarms for each finding that is absent, likewise
     */
    public Quickscore(double[] presentFalseAlarms, double[] absentFalseAlarms) {
        present = presentFalseAlarms.length;
        if (present > MOST_PRESENT) {
            throw new IllegalArgumentException(present + " findings at once; at most " + MOST_PRESENT + " are summed over");
        }
        double away = 1;
        for (double alarm : absentFalseAlarms) {
            away *= 1 - alarm;
        }
        double[] passes = new double[present];
        for (int f = 0; f < present; f++) {
            passes[f] = 1 - presentFalseAlarms[f];
        }
        leakOf = subsets(passes);
        for (int u = 0; u < leakOf.length; u++) {
            leakOf[u] *= (Integer.bitCount(u) & 1) == 0 ? away : -away;
        }
    }

    /** For every subset of findings the product of the numbers of its members; bit f is finding f. */
    public static double[] subsets(double[] numbers) {
        double[] products = new double[1 << numbers.length];
        products[0] = 1;
        for (int f = 0; f < numbers.length; f++) {
            int half = 1 << f;
            for (int u = 0; u < half; u++) {
                products[half + u] = products[u] * numbers[f];
            }
        }
        return products;
    }

    /**
     * Adds a cause.
     *
     * @param weights for each of its states the chance (or chance times likelihood)
     * @param passesPresent for each state and each present finding the chance that this state does not raise it
     * @param passesAbsent for each state and each absent finding likewise
     */
    public Quickscore cause(double[] weights, double[][] passesPresent, double[][] passesAbsent) {
        double[] message = new double[1 << present];
        for (int state = 0; state < weights.length; state++) {
            double weight = weights[state];
            for (double pass : passesAbsent[state]) {
                weight *= pass;
            }
            double[] products = subsets(passesPresent[state]);
            for (int u = 0; u < message.length; u++) {
                message[u] += weight * products[u];
            }
        }
        return cause(message);
    }

    /** Adds a cause by its message: for every subset of present findings the sum over its states of weight times passes. */
    public Quickscore cause(double[] message) {
        if (message.length != 1 << present) {
            throw new IllegalArgumentException("a message over " + present + " findings has " + (1 << present) + " numbers");
        }
        messages.add(message);
        return this;
    }

    /** Chance of everything that was found, present and absent. */
    public double chance() {
        double sum = 0;
        for (int u = 0; u < leakOf.length; u++) {
            double term = leakOf[u];
            for (double[] message : messages) {
                term *= message[u];
            }
            sum += term;
        }
        return sum;
    }

    /** For one cause: for every subset the signed product of everything else; times its own message, summed, is the chance. */
    public double[] outside(int cause) {
        double[] rest = leakOf.clone();
        for (int other = 0; other < messages.size(); other++) {
            if (other != cause) {
                double[] message = messages.get(other);
                for (int u = 0; u < rest.length; u++) {
                    rest[u] *= message[u];
                }
            }
        }
        return rest;
    }
}
