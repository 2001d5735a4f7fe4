package gudgeon.core.measuring;

import java.util.OptionalDouble;

/**
 * What a result is held against, in its unit.
 *
 * @param name wear, taper, new ...
 * @param lower empty when open below
 * @param upper empty when open above
 * @param confirmed whether somebody vouches for it: read in the user's own manual. A verdict on another one is provisional
 */
public record Limits(String name, OptionalDouble lower, OptionalDouble upper, boolean confirmed) {
    public Limits {
        if (lower.isEmpty() && upper.isEmpty()) {
            throw new IllegalArgumentException(
                    "the limit \"" + name + "\" says nothing: neither a least nor a largest value");
        }
        double least = lower.orElse(Double.NEGATIVE_INFINITY);
        double most = upper.orElse(Double.POSITIVE_INFINITY);
        if (!(least <= most)) {
            throw new IllegalArgumentException(
                    "the limit \"" + name + "\" leaves nothing between " + least + " and " + most);
        }
    }

    /** At most a value. */
    public static Limits atMost(String name, double upper, boolean confirmed) {
        return new Limits(name, OptionalDouble.empty(), OptionalDouble.of(upper), confirmed);
    }

    /** At least a value. */
    public static Limits atLeast(String name, double lower, boolean confirmed) {
        return new Limits(name, OptionalDouble.of(lower), OptionalDouble.empty(), confirmed);
    }

    /** Between two values. */
    public static Limits between(String name, double lower, double upper, boolean confirmed) {
        return new Limits(name, OptionalDouble.of(lower), OptionalDouble.of(upper), confirmed);
    }

    double least() {
        return lower.orElse(Double.NEGATIVE_INFINITY);
    }

    double most() {
        return upper.orElse(Double.POSITIVE_INFINITY);
    }

    /** How far a value lies inside its nearest limit; negative beyond it. */
    public double room(double value) {
        return Math.min(most() - value, value - least());
    }
}
