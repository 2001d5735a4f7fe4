package gudgeon.core.engine;

import java.util.OptionalDouble;

/**
 * Something that undoing destroys and that must be bought again.
 *
 * @param spec what to ask for, without a maker's number ("copper washer 14 x 20 x 1.5")
 * @param count how many
 * @param priceEach typical price of one in the currency of the job; empty when not known
 */
public record Spend(String spec, int count, OptionalDouble priceEach) {
    public Spend {
        if (count < 1) {
            throw new IllegalArgumentException("a spend counts at least one, not " + count);
        }
    }
}
