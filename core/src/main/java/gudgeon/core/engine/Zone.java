package gudgeon.core.engine;

import java.util.List;

/**
 * Where a person stands or lies. Going from one zone to another costs {@code backSeconds} of the first and
 * {@code goSeconds} of the second, unless a way over a third zone is shorter.
 *
 * @param goSeconds time to get there from the start zone
 * @param backSeconds time to come back to the start zone
 * @param cautions caution ids that stand in the first step after arriving
 */
public record Zone(String id, String name, long goSeconds, long backSeconds, List<String> cautions) {
    /** The zone where pieces that are off are worked on; every engine has it. */
    public static final String BENCH = "bench";

    public Zone {
        cautions = List.copyOf(cautions);
    }
}
