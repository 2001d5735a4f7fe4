package gudgeon.core.finding;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Something that is there or not.
 *
 * @param id its name in files and answers
 * @param test the test that shows it
 * @param at a cylinder or the engine
 * @param ask the statement that is answered with yes or no
 * @param falseAlarm chance of a yes with nothing wrong that raises it
 * @param heard the path whose leak is heard, for those that follow from leaks
 * @param raisedBy what raises it, in file order
 */
public record FindingKind(
        String id,
        String test,
        Place at,
        String ask,
        double falseAlarm,
        Optional<Path> heard,
        Map<String, Strength> raisedBy) {
    public FindingKind {
        raisedBy = Collections.unmodifiableMap(new LinkedHashMap<>(raisedBy));
        if (!(falseAlarm >= 0 && falseAlarm < 1)) {
            throw new IllegalArgumentException("the false alarm of " + id + " is " + falseAlarm);
        }
    }

    /** Where air is heard or seen. */
    public enum Path {
        EXHAUST,
        INTAKE,
        CRANKCASE,
        COOLANT,
        NEIGHBOUR,
        OUTSIDE
    }

    /**
     * @param chance that the fault alone raises the finding
     * @param support what says that it does
     * @param needs what the engine must be or have for it
     */
    public record Strength(double chance, Support support, List<String> needs) {
        public Strength {
            needs = List.copyOf(needs);
            if (!(chance > 0 && chance < 1)) {
                throw new IllegalArgumentException("a strength of " + chance + "; above 0 and below 1 is right");
            }
        }
    }
}
