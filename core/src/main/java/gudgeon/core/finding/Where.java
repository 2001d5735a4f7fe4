package gudgeon.core.finding;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Where a fault is.
 *
 * @param at what it belongs to
 * @param cylinders the cylinders that it touches, from 1
 * @param bank the bank, from 1; 0 when it is none of one bank
 */
public record Where(Place at, List<Integer> cylinders, int bank) {
    public Where {
        cylinders = List.copyOf(cylinders);
    }

    static Where cylinder(int cylinder) {
        return new Where(Place.CYLINDER, List.of(cylinder), 0);
    }

    /** {@code 3}, {@code 3-4}, {@code bank 2} or {@code engine}. */
    public String label() {
        return switch (at) {
            case CYLINDER, NEIGHBOURS -> cylinders.stream().map(String::valueOf).collect(Collectors.joining("-"));
            case BANK -> "bank " + bank;
            case ENGINE -> "engine";
        };
    }
}
