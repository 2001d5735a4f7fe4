package gudgeon.core.measuring;

import java.util.Locale;
import java.util.Optional;

/**
 * Common instruments with typical figures, for those who do not know their own better: resolution and what they may err by when
 * in order. From memory of the standards of each; common practice.
 */
public enum InstrumentKind {
    MICROMETER(0.01, 0.004),
    DIGITAL_MICROMETER(0.001, 0.003),
    BORE_GAUGE(0.01, 0.008),
    TELESCOPIC_GAUGE(0.01, 0.015),
    CALIPER(0.01, 0.03),
    DIAL(0.01, 0.015),
    LEVER_DIAL(0.01, 0.01),
    DEPTH_GAUGE(0.01, 0.03),
    FEELERS(0.05, 0.005),
    PLASTIC_THREAD(0.025, 0.01);

    private static final TwoLimits ANY_SIZE = new TwoLimits(0, 1000);

    private final double resolution_mm;
    private final double maximumError_mm;

    InstrumentKind(double resolution_mm, double maximumError_mm) {
        this.resolution_mm = resolution_mm;
        this.maximumError_mm = maximumError_mm;
    }

    /** The kind of a name: bore gauge, bore-gauge, lever dial ... */
    public static Optional<InstrumentKind> find(String name) {
        String key = name.strip().toLowerCase(Locale.ROOT).replaceAll("[ _-]+", " ");
        for (InstrumentKind kind : values()) {
            if (kind.word().equals(key)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }

    /** Its name in words. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    public double resolution_mm() {
        return resolution_mm;
    }

    public double maximumError_mm() {
        return maximumError_mm;
    }

    /** Such an instrument with typical figures, its standard of steel, of any range. */
    public Instrument typical() {
        return new Instrument(
                word(), resolution_mm, maximumError_mm, ANY_SIZE, Expanding.of(Material.GAUGE_STEEL), Optional.empty());
    }
}
