package gudgeon.core.measuring;

/**
 * How a quantity known only within bounds is spread between them, and so its standard uncertainty for a half-width of one.
 * Source: [GUM] 4.3, [JCGM101] 6.4.
 */
public enum Spread {
    /** Any value between the bounds as likely as any other: half-width over root three. */
    RECTANGULAR(Math.sqrt(3)),
    /** Near the middle likelier, to nothing at the bounds: half-width over root six. */
    TRIANGULAR(Math.sqrt(6)),
    /** A value that swings between the bounds, as a thermostat's: half-width over root two. */
    ARCSINE(Math.sqrt(2)),
    /** Bounds that hold 95 % of a normal distribution: half-width over 1.96. */
    NORMAL_95(1.959963984540054),
    /** No bounds: the half-width given is the standard uncertainty itself. */
    NORMAL(1);

    private final double divisor;

    Spread(double divisor) {
        this.divisor = divisor;
    }

    /**
     * The standard uncertainty.
     *
     * @param halfWidth not negative, finite
     */
    public double standardUncertainty(double halfWidth) {
        if (!(halfWidth >= 0 && Double.isFinite(halfWidth))) {
            throw new IllegalArgumentException("a half-width must be zero or more, not " + halfWidth);
        }
        return halfWidth / divisor;
    }

    /** The half-width of the bounds for a standard uncertainty. */
    double halfWidth(double standardUncertainty) {
        return standardUncertainty * divisor;
    }
}
