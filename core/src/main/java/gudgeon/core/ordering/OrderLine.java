package gudgeon.core.ordering;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One line of an order list: one specification.
 *
 * @param spec what to ask for
 * @param amount how much
 * @param price what is known of its price
 * @param uses what it is for, in the order of the plan; never empty
 */
public record OrderLine(String spec, Amount amount, Price price, List<Use> uses) {
    public OrderLine {
        uses = List.copyOf(uses);
        if (uses.isEmpty()) {
            throw new IllegalArgumentException("an order line is for something: " + spec);
        }
    }

    /**
     * What is known of a line's price, in the currency of the engine file.
     *
     * @param each price of one piece when all pieces have the same; empty otherwise
     * @param known sum over the pieces whose price is known
     * @param unpriced how many pieces have no price; 1 for a line that is not counted in pieces
     */
    public record Price(OptionalDouble each, double known, int unpriced) {
        /** No price for a line that is not counted in pieces. */
        public static final Price NONE = new Price(OptionalDouble.empty(), 0, 1);
    }

    /**
     * One use.
     *
     * @param step number of the plan's step that makes it necessary, 1-based
     * @param id joint, ready operation or circuit it is for
     * @param count pieces for this use; 0 for a line that is not counted in pieces
     */
    public record Use(int step, String id, int count) {}
}
