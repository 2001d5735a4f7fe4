package gudgeon.core.bolting;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Property classes of steel bolts, screws and studs; lowest values, in megapascals. Class 8.8 is stronger above 16 mm; class
 * 9.8 ends there.
 *
 * <p>Source: [ISO898-1] table 3. The elongations of 4.8, 5.8 and 6.8 are those of the editions before 2009, from memory; the
 * edition of 2009 gives none for them.
 */
public enum PropertyClass {
    C4_6("4.6", new Values(400, 240, 225, 22)),
    C4_8("4.8", new Values(420, 340, 310, 14)),
    C5_6("5.6", new Values(500, 300, 280, 20)),
    C5_8("5.8", new Values(520, 420, 380, 10)),
    C6_8("6.8", new Values(600, 480, 440, 8)),
    C8_8("8.8", new Values(800, 640, 580, 12)),
    C9_8("9.8", new Values(900, 720, 650, 10)),
    C10_9("10.9", new Values(1040, 940, 830, 9)),
    C12_9("12.9", new Values(1220, 1100, 970, 8));

    private static final double STEP_mm = 16;
    private static final Values LARGE_8_8 = new Values(830, 660, 600, 12);

    private final String written;
    private final Values values;

    PropertyClass(String written, Values values) {
        this.written = written;
        this.values = values;
    }

    private record Values(double tensile_MPa, double yield_MPa, double proof_MPa, double elongation_percent) {}

    /** The class as it stands on the head: 8.8; empty for a text that names none. */
    public static Optional<PropertyClass> find(String written) {
        return Arrays.stream(values())
                .filter(each -> each.written.equals(written.strip()))
                .findFirst();
    }

    /** As it stands on the head. */
    public String written() {
        return written;
    }

    private Values at(double diameter_mm) {
        if (!(diameter_mm > 0)) {
            throw new IllegalArgumentException("a diameter must be above 0, not " + diameter_mm);
        }
        if (this == C9_8 && diameter_mm > STEP_mm) {
            throw new IllegalArgumentException("class 9.8 ends at 16 mm, not " + diameter_mm + " mm");
        }
        return this == C8_8 && diameter_mm > STEP_mm ? LARGE_8_8 : values;
    }

    /** Lowest tensile strength Rm, megapascals. */
    public double tensileStrength_MPa(double diameter_mm) {
        return at(diameter_mm).tensile_MPa();
    }

    /** Lowest yield point ReL (4.6, 5.6), stress Rpf (4.8 to 6.8) or 0.2 % proof stress Rp0.2 (8.8 and above), megapascals. */
    public double yield_MPa(double diameter_mm) {
        return at(diameter_mm).yield_MPa();
    }

    /** Stress under proof load Sp, megapascals. */
    public double proofStress_MPa(double diameter_mm) {
        return at(diameter_mm).proof_MPa();
    }

    /** Lowest elongation after fracture A of a machined test piece, per cent. */
    public double elongation_percent(double diameter_mm) {
        return at(diameter_mm).elongation_percent();
    }

    /** Proof load: nominal stress area times stress under proof load, newtons. */
    public double proofLoad_N(MetricThread thread) {
        return thread.nominalStressArea_mm2() * proofStress_MPa(thread.diameter_mm());
    }

    /** Lowest ultimate tensile load: nominal stress area times lowest tensile strength, newtons. */
    public double ultimateLoad_N(MetricThread thread) {
        return thread.nominalStressArea_mm2() * tensileStrength_MPa(thread.diameter_mm());
    }

    /** The diameter at which the values change, millimetres; empty for a class without a step. */
    public OptionalDouble findStep_mm() {
        return this == C8_8 ? OptionalDouble.of(STEP_mm) : OptionalDouble.empty();
    }
}
