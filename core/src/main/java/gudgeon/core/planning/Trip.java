package gudgeon.core.planning;

import gudgeon.core.engine.Spend;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * What it takes to get at one part and to close up again: the cheapest set of joints and ready operations, with bounds of
 * the rest. Meanings: docs/planning.md, <em>While it is open</em>.
 *
 * @param operations ids of the cheapest set, joints first, in file order
 * @param costSeconds what question 1 counts for it: time, plus money turned into time at the person's worth; proven least
 * @param strip undoing: the set, changeover, lifts
 * @param build the way back of the same: joints, what is taken back, sealing, filling, bleeding, checks, placing,
 *     changeover; waits are left out
 * @param destroyed what it destroys, merged by specification
 * @param money value of that, where prices are known
 */
public record Trip(
        List<String> operations,
        long costSeconds,
        Span strip,
        Span build,
        List<Spend> destroyed,
        OptionalDouble money) {
    /** Nothing need be done. */
    public static final Trip NONE =
            new Trip(List.of(), 0, Span.exactly(0), Span.exactly(0), List.of(), OptionalDouble.empty());

    public Trip {
        operations = List.copyOf(operations);
        destroyed = List.copyOf(destroyed);
    }

    /**
     * A time that lies between bounds.
     *
     * @param atLeastSeconds proven: it cannot take less
     * @param foundSeconds a way that was found takes so long; empty when none was looked for
     */
    public record Span(long atLeastSeconds, OptionalLong foundSeconds) {
        public Span {
            if (foundSeconds.isPresent() && foundSeconds.getAsLong() < atLeastSeconds) {
                throw new IllegalArgumentException(
                        "found " + foundSeconds.getAsLong() + " s, less than the bound of " + atLeastSeconds + " s");
            }
        }

        static Span exactly(long seconds) {
            return new Span(seconds, OptionalLong.of(seconds));
        }

        Span plus(Span other) {
            return new Span(
                    atLeastSeconds + other.atLeastSeconds,
                    foundSeconds.isPresent() && other.foundSeconds.isPresent()
                            ? OptionalLong.of(foundSeconds.getAsLong() + other.foundSeconds.getAsLong())
                            : OptionalLong.empty());
        }
    }

    /** There and back. */
    public Span both() {
        return strip.plus(build);
    }
}
