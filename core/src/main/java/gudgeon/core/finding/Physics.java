package gudgeon.core.finding;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * The healthy engine and the scatter of readings. Scatters are standard deviations, of a logarithm unless said otherwise.
 *
 * @param healthy what leaks past sound rings
 * @param compression scatters of compression figures
 * @param wet scatter of the wet ratio, and the share of the oil's volume that counts
 * @param leak of a leak's area
 * @param current of the relative hump, not of its logarithm
 * @param balance of the relative fall, not of its logarithm
 * @param hearing how a leak is heard
 * @param openValve chance that a breach is heard at the open valve of the neighbour
 */
public record Physics(
        Healthy healthy,
        Compression compression,
        Wet wet,
        double leak,
        double current,
        double balance,
        Map<FindingKind.Path, Hearing> hearing,
        double openValve) {
    public Physics {
        hearing = Collections.unmodifiableMap(new EnumMap<>(hearing));
        if (hearing.size() < FindingKind.Path.values().length) {
            throw new IllegalArgumentException("hearing is known for " + hearing.keySet() + " only");
        }
    }

    /**
     * @param rings leak past sound rings, in 0.040 inch orifices
     * @param scatter of its logarithm
     */
    public record Healthy(double rings, double scatter) {}

    /**
     * @param scatter of one reading
     * @param known of a healthy figure that is known for this engine
     * @param stated of one that is only stated
     * @param guessed of one worked out from the compression ratio
     * @param badRun chance that the whole run was done badly
     * @param badRunBy by how much its readings are lower
     * @param badRunScatter of that
     */
    public record Compression(
            double scatter,
            double known,
            double stated,
            double guessed,
            double badRun,
            double badRunBy,
            double badRunScatter) {}

    /**
     * @param scatter of the ratio
     * @param volumeCounts share of the oil's volume that takes up room above the piston
     */
    public record Wet(double scatter, double volumeCounts) {}

    /**
     * Clearly heard with the chance floor + (ceiling - floor) x^steep / (x^steep + half^steep).
     *
     * @param floor with no leak
     * @param ceiling with a very large one
     * @param half the leak, in orifices, at which it is half way
     * @param steep how quickly it rises
     */
    public record Hearing(double floor, double ceiling, double half, double steep) {
        /** Chance that a leak of this size is clearly heard. */
        public double chance(double orifices) {
            double a = Math.pow(orifices / half, steep);
            return floor + (ceiling - floor) * a / (a + 1);
        }
    }
}
