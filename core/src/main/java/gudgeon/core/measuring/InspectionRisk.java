package gudgeon.core.measuring;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * How often an inspection errs: parts spread normally about the middle of two-sided limits, readings spread normally about the
 * part's true value. Everything in units of the parts' standard deviation. Global risks of producer and consumer. Source:
 * [JCGM106] 9.5.
 *
 * @param limit half the distance of the limits; above zero
 * @param testSd standard deviation of a reading; above zero
 * @param acceptance half the distance of the limits of acceptance; above zero
 */
public record InspectionRisk(double limit, double testSd, double acceptance) {
    private static final int NODES = 24;
    private static final double FAR = 12;

    public InspectionRisk {
        above("limit", limit);
        above("standard deviation of a reading", testSd);
        above("limit of acceptance", acceptance);
    }

    /**
     * From the customary figures.
     *
     * @param limitInSigma half the distance of the limits
     * @param sigmaRatio standard deviation of the parts over that of a reading
     * @param guardBandFactor limits of acceptance over limits
     */
    public static InspectionRisk of(double limitInSigma, double sigmaRatio, double guardBandFactor) {
        above("ratio of standard deviations", sigmaRatio);
        return new InspectionRisk(limitInSigma, 1 / sigmaRatio, limitInSigma * guardBandFactor);
    }

    /** Half the distance of limits that hold a share of the parts, in the parts' standard deviation. */
    public static double limitHolding(double share) {
        return Distributions.normalQuantile((1 + share) / 2);
    }

    /** The probability that a part is beyond its limits and accepted. */
    public double falseAccept() {
        double end = Math.max(limit, Math.min(Math.max(limit, acceptance) + FAR * testSd, FAR + limit));
        return 2 * accepted(limit, end);
    }

    /** The probability that an accepted part is beyond its limits. */
    public double conditionalFalseAccept() {
        return falseAccept() / acceptedShare();
    }

    /** The probability that a part is within its limits and refused. */
    public double falseReject() {
        return 2 * Math.max(0, Distributions.normalBelow(limit) - 0.5 - accepted(0, limit));
    }

    /** The share of parts that is accepted. */
    public double acceptedShare() {
        return 1 - 2 * Distributions.normalBelow(-acceptance / Math.hypot(1, testSd));
    }

    /** The probability that a part lies in a stretch on one side and its reading is accepted. */
    private double accepted(double from, double to) {
        GaussIntegrator rule = new GaussIntegratorFactory().legendre(NODES, 0, 1);
        double step = Math.min(1, testSd) / 2;
        int panels = (int) Math.min(20_000, Math.max(1, Math.ceil((to - from) / step)));
        double width = (to - from) / panels;
        double sum = 0;
        for (int i = 0; i < panels; i++) {
            double start = from + i * width;
            sum += width * rule.integrate(t -> density(start + t * width));
        }
        return sum;
    }

    private double density(double part) {
        double reads = Distributions.normalBelow((acceptance - part) / testSd)
                - Distributions.normalBelow((-acceptance - part) / testSd);
        return Distributions.normalDensity(part) * reads;
    }

    private static void above(String what, double value) {
        if (!(value > 0 && Double.isFinite(value))) {
            throw new IllegalArgumentException("the " + what + " must be above zero, not " + value);
        }
    }
}
