package gudgeon.core.measuring;

import java.util.Optional;

/**
 * A measuring instrument of the user's.
 *
 * @param id a short name, unique in the toolbox
 * @param resolution_mm the last figure that can be read; zero only for instruments that are not read (go and no-go)
 * @param maximumError_mm what it may err by: its maximum permissible error, as bought or as checked
 * @param range_mm from where to where it measures
 * @param standard of the scale, or of the setting standard that it was zeroed with
 * @param check the last check against a setting standard; empty when none is known
 */
public record Instrument(
        String id,
        double resolution_mm,
        double maximumError_mm,
        TwoLimits range_mm,
        Expanding standard,
        Optional<Check> check) {
    public Instrument {
        if (!(resolution_mm >= 0 && Double.isFinite(resolution_mm))) {
            throw new IllegalArgumentException(
                    "the resolution of " + id + " must be zero or more, not " + resolution_mm);
        }
        if (!(maximumError_mm > 0 && Double.isFinite(maximumError_mm))) {
            throw new IllegalArgumentException("what " + id + " may err by must be above zero, not " + maximumError_mm);
        }
    }

    /**
     * A check against a setting standard.
     *
     * @param offset_mm what the instrument showed less the standard's size; taken off every reading
     * @param daysAgo how long ago; zero or more
     */
    public record Check(double offset_mm, int daysAgo) {
        public Check {
            if (!Double.isFinite(offset_mm) || daysAgo < 0) {
                throw new IllegalArgumentException(
                        "a check has an offset, and lies 0 or more days back, not " + daysAgo);
            }
        }
    }

    /** What it shows too much, as known. */
    public double offset_mm() {
        return check.map(Check::offset_mm).orElse(0.0);
    }

    /** Whether it measures such a size. */
    public boolean reaches(double size_mm) {
        return size_mm >= range_mm.lower() && size_mm <= range_mm.upper();
    }
}
