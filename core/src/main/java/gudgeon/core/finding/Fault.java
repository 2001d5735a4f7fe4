package gudgeon.core.finding;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Something that can be wrong.
 *
 * @param id its name in files and answers
 * @param words name, what it does, what mends it
 * @param at what it belongs to
 * @param needs what an engine must be or have for it to be possible
 * @param chance that one given cylinder, pair, bank or engine has it before anything is known
 * @param repair what mends it and how deep
 * @param each whether every cylinder draws its own grade (only for a fault of the engine)
 * @param grades how bad it can be; shares sum to one; empty when it does nothing to sealing and work
 */
public record Fault(
        String id,
        Words words,
        Place at,
        List<String> needs,
        Chance chance,
        Repair repair,
        boolean each,
        List<Grade> grades) {
    public Fault {
        needs = List.copyOf(needs);
        grades = List.copyOf(grades);
        double shares = grades.stream().mapToDouble(Grade::share).sum();
        if (!grades.isEmpty() && Math.abs(shares - 1) > 1e-6) {
            throw new IllegalArgumentException("the shares of " + id + " sum to " + shares + ", not to 1");
        }
        if (each && at != Place.ENGINE) {
            throw new IllegalArgumentException(id + " is no fault of the whole engine, so 'each' says nothing");
        }
    }

    /**
     * @param name what it is called
     * @param shows what it does
     * @param mend what mends it
     */
    public record Words(String name, String shows, String mend) {}

    /**
     * @param alone when nothing else is known
     * @param with when a certain other fault is there
     */
    public record Chance(double alone, Map<String, Double> with) {
        public Chance {
            with = Collections.unmodifiableMap(new LinkedHashMap<>(with));
            if (!(alone > 0 && alone < 0.5)) {
                throw new IllegalArgumentException("a chance of " + alone + "; above 0 and below 0.5 is right");
            }
        }
    }

    /**
     * @param parts what is bought for it
     * @param seen how deep one goes to see it for sure
     * @param mended how deep one goes to mend it
     * @param hours of work, typical
     */
    public record Repair(List<String> parts, Depth seen, Depth mended, double hours) {
        public Repair {
            parts = List.copyOf(parts);
        }
    }
}
