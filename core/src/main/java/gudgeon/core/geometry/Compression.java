package gudgeon.core.geometry;

/** What air does when a piston compresses it. */
public final class Compression {
    /** Exponents of a cranking engine: slow and cold, to quick and warm. Common practice; typical. */
    public static final double LEAST_CRANKING_EXPONENT = 1.20;

    /** The upper end of {@link #LEAST_CRANKING_EXPONENT}. */
    public static final double MOST_CRANKING_EXPONENT = 1.32;

    private Compression() {}

    /**
     * How much the absolute pressure rises: ratio to the power of the exponent.
     *
     * @param volumeRatio volume before over volume after, above 0
     * @param exponent polytropic exponent, 1 (heat leaves freely) to 1.67
     */
    public static double pressureRatio(double volumeRatio, double exponent) {
        Guard.positive("The ratio of volumes", volumeRatio, "");
        Guard.between("The exponent", exponent, 1, 5.0 / 3, "");
        return Math.pow(volumeRatio, exponent);
    }

    /**
     * The gauge pressure to expect of a sound, warm cylinder at cranking speed, throttle open, as a band.
     *
     * @param effectiveRatio compression ratio from where the inlet closes, above 1
     * @param ambient_Pa pressure of the air outside, in Pa
     */
    public static Band cranking(double effectiveRatio, double ambient_Pa) {
        Guard.positive("The effective ratio less one", effectiveRatio - 1, "");
        Guard.positive("The pressure outside", ambient_Pa, "Pa");
        return new Band(
                ambient_Pa * (pressureRatio(effectiveRatio, LEAST_CRANKING_EXPONENT) - 1),
                ambient_Pa * (pressureRatio(effectiveRatio, MOST_CRANKING_EXPONENT) - 1));
    }

    /** A band of gauge pressures in Pa. */
    public record Band(double least_Pa, double most_Pa) {}

    /**
     * The temperature after compression without heat or friction, the specific heat changing with temperature, in K. Dry air as in {@link Air}.
     *
     * @param volumeRatio volume before over volume after, 1 or more
     * @param before_K temperature before, 200 to 1,000 K
     */
    public static double isentropicTemperature_K(double volumeRatio, double before_K) {
        Guard.between("The ratio of volumes", volumeRatio, 1, 60, "");
        Guard.between("The temperature before", before_K, 200, 1_000, "K");
        double low = before_K;
        double high = 3_000;
        double wanted = Math.log(volumeRatio);
        for (int i = 0; i < 100; i++) {
            double middle = (low + high) / 2;
            // Entropy stays: s(T2) - s(T1) = R ln(p2/p1), and p2/p1 is the ratio of volumes times T2/T1.
            double change = Air.entropy(middle) - Air.entropy(before_K) - Math.log(middle / before_K);
            if (change < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
