package gudgeon.core.geometry;

import java.math.BigInteger;
import java.util.List;
import java.util.OptionalLong;

/**
 * A camshaft driven from the crankshaft by toothed wheels and a belt or chain: what one tooth is worth, and after how many
 * turns which marks meet again. Exact, by whole numbers.
 *
 * @param crank_teeth teeth of the crank's wheel, above 0
 * @param cam_teeth teeth of the camshaft's wheel, above 0
 * @param belt_teeth teeth or links of belt or chain; empty where the wheels mesh
 */
public record ToothTiming(int crank_teeth, int cam_teeth, OptionalLong belt_teeth) {
    public ToothTiming {
        Guard.positive("The crank wheel's teeth", crank_teeth, "");
        Guard.positive("The camshaft wheel's teeth", cam_teeth, "");
        belt_teeth.ifPresent(teeth -> Guard.positive("The belt's teeth", (double) teeth, ""));
    }

    /** Crank turns for one turn of the camshaft: 2 for a four-stroke. */
    public double ratio() {
        return (double) cam_teeth / crank_teeth;
    }

    /** What one tooth is worth at the camshaft's wheel, in crank degrees: 360 / crank teeth. */
    public double oneTooth_crankDeg() {
        return 360.0 / crank_teeth;
    }

    /** What one tooth is worth, in degrees of the camshaft. */
    public double oneTooth_camDeg() {
        return 360.0 / cam_teeth;
    }

    /** After how many turns of the crank its mark and the camshaft's stand together again. */
    public long wheelMarksMeet() {
        return turnsFor(List.of((long) cam_teeth));
    }

    /** After how many turns of the crank its mark meets the same tooth of the belt again. */
    public OptionalLong crankAndBeltMeet() {
        return belt_teeth.isEmpty()
                ? OptionalLong.empty()
                : OptionalLong.of(turnsFor(List.of(belt_teeth.getAsLong())));
    }

    /** After how many turns of the crank both wheels and the belt stand as they stood. */
    public OptionalLong allMeet() {
        return belt_teeth.isEmpty()
                ? OptionalLong.empty()
                : OptionalLong.of(turnsFor(List.of((long) cam_teeth, belt_teeth.getAsLong())));
    }

    /** The least number of crank turns after which every one of the tooth counts has passed whole times. */
    private long turnsFor(List<Long> counts) {
        BigInteger crank = BigInteger.valueOf(crank_teeth);
        BigInteger passed = crank;
        for (long count : counts) {
            BigInteger other = BigInteger.valueOf(count);
            passed = passed.divide(passed.gcd(other)).multiply(other);
        }
        return passed.divide(crank).longValueExact();
    }

    /** How far the camshaft is off when the belt sits some teeth from where it belongs, in crank degrees. */
    public double off_crankDeg(int teeth) {
        return teeth * oneTooth_crankDeg();
    }
}
