package gudgeon.core.engine;

import java.util.List;

/**
 * Something looked at, turned, filled or waited for on the way back, with the window in which it makes sense.
 *
 * @param id ASCII, unique among checks
 * @param kind check, wait, prime, adjust
 * @param when joints or ready operations any of which must have been in the strip for the check to be due; empty: always
 * @param after build marks that must be reached: "joint" (finished), "joint/snug", "joint/2", or a ready operation (restored)
 * @param before build marks that must not have been started
 * @param gate whether nothing in {@code before} may start until it is signed (a point of no return)
 * @param minLagSeconds shortest time after the last of {@code after}
 */
public record Check(
        String id,
        String name,
        String kind,
        List<String> when,
        List<String> after,
        List<String> before,
        boolean gate,
        long minLagSeconds,
        Work work) {
    public Check {
        when = List.copyOf(when);
        after = List.copyOf(after);
        before = List.copyOf(before);
    }

    /** Where, with what and how long. */
    public record Work(String zone, List<String> tools, long seconds, List<String> cautions, String note) {
        public Work {
            tools = List.copyOf(tools);
            cautions = List.copyOf(cautions);
        }
    }
}
