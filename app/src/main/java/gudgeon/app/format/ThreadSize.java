package gudgeon.app.format;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A metric thread's size, for a plain estimate of what torque it stands.
 *
 * <p>Tensile stress area after ISO 898-1: A = pi/4 (d - 0.9382 P)²; coarse pitches of ISO 261; proof stresses of the property
 * classes of ISO 898-1 (nominal, from memory). The torque at proof load is K d F with K = 0.2, a typical dry thread.
 *
 * @param diameter_mm nominal diameter
 * @param pitch_mm pitch
 */
record ThreadSize(double diameter_mm, double pitch_mm) {
    private static final Pattern METRIC =
            Pattern.compile("M(\\d{1,3}(?:\\.\\d)?)(?:\\s?[x×]\\s?(\\d(?:\\.\\d{1,2})?))?( LH)?");
    private static final double NUT_FACTOR = 0.2;
    private static final Map<String, Double> COARSE_mm = Map.ofEntries(
            Map.entry("2", 0.4),
            Map.entry("2.5", 0.45),
            Map.entry("3", 0.5),
            Map.entry("3.5", 0.6),
            Map.entry("4", 0.7),
            Map.entry("5", 0.8),
            Map.entry("6", 1.0),
            Map.entry("7", 1.0),
            Map.entry("8", 1.25),
            Map.entry("10", 1.5),
            Map.entry("12", 1.75),
            Map.entry("14", 2.0),
            Map.entry("16", 2.0),
            Map.entry("18", 2.5),
            Map.entry("20", 2.5),
            Map.entry("22", 2.5),
            Map.entry("24", 3.0),
            Map.entry("27", 3.0),
            Map.entry("30", 3.5));
    private static final Map<String, Double> PROOF_MPa = Map.of(
            "4.6", 225.0, "4.8", 310.0, "5.6", 280.0, "5.8", 380.0, "6.8", 440.0, "8.8", 600.0, "9.8", 650.0, "10.9",
            830.0, "12.9", 970.0);

    /** The size of a metric thread; empty for other threads, or when a pitch is neither written nor of the coarse series. */
    static Optional<ThreadSize> find(String thread) {
        Matcher matcher = METRIC.matcher(thread);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        String pitch = matcher.group(2);
        Double pitch_mm = pitch != null ? Double.valueOf(pitch) : COARSE_mm.get(matcher.group(1));
        double diameter_mm = Double.parseDouble(matcher.group(1));
        if (pitch_mm == null || pitch_mm <= 0 || pitch_mm * 2 > diameter_mm) {
            return Optional.empty();
        }
        return Optional.of(new ThreadSize(diameter_mm, pitch_mm));
    }

    /** Whether a text starts like a metric thread. */
    static boolean looksMetric(String thread) {
        return thread.matches("M\\s?\\d.*");
    }

    double stressArea_mm2() {
        double d_mm = diameter_mm - 0.9382 * pitch_mm;
        return Math.PI / 4 * d_mm * d_mm;
    }

    /** Estimated torque at the proof load of a property class; empty for a class that is not in the table. */
    Optional<Double> proofTorque_Nm(String grade) {
        return Optional.ofNullable(PROOF_MPa.get(grade))
                .map(proof_MPa -> NUT_FACTOR * diameter_mm / 1000 * proof_MPa * stressArea_mm2());
    }

    static boolean knownGrade(String grade) {
        return PROOF_MPa.containsKey(grade);
    }
}
