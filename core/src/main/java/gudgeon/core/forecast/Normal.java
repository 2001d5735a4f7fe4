package gudgeon.core.forecast;

/** The standard normal distribution. */
final class Normal {
    /** Beyond this the distribution function is 0 or 1 to the last bit that matters (1e-15). */
    private static final double FAR = 8.0;

    private Normal() {}

    /**
     * The distribution function, absolute error below 1e-14: a Taylor series about zero. Source: [MARS2004], from memory.
     */
    static double below(double z) {
        if (z < -FAR) {
            return 0;
        }
        if (z > FAR) {
            return 1;
        }
        double sum = z;
        double term = z;
        for (int i = 3; Math.abs(term) > 1e-17 * Math.abs(sum); i += 2) {
            term *= z * z / i;
            sum += term;
            if (term == 0) {
                break;
            }
        }
        return 0.5 + sum * Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
    }

    /**
     * The quantile.
     *
     * @param p strictly between 0 and 1
     */
    static double quantile(double p) {
        if (!(p > 0 && p < 1)) {
            throw new IllegalArgumentException("a quantile lies strictly between 0 and 1, not at " + p);
        }
        double low = -FAR;
        double high = FAR;
        while (high - low > 1e-13) {
            double middle = (low + high) / 2;
            if (below(middle) < p) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
