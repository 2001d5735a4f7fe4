package gudgeon.core.finding;

/**
 * What opening an engine costs, minutes, money turned into minutes; from the planner on an engine file, or typical.
 *
 * @param covers to have the covers off
 * @param headOff to have the head off when they are
 * @param bottomEnd to reach pistons and crankshaft when it is
 * @param typical whether these are typical figures and not those of an engine file
 */
public record OpeningCosts(double covers, double headOff, double bottomEnd, boolean typical) {
    /** Typical of a car's four; no engine file stands behind them. */
    public static final OpeningCosts TYPICAL = new OpeningCosts(60, 300, 420, true);

    public OpeningCosts {
        if (!(covers >= 0 && headOff >= 0 && bottomEnd >= 0)) {
            throw new IllegalArgumentException("opening costs are not negative: " + covers + ", " + headOff + ", " + bottomEnd);
        }
    }

    /** What each level costs when the one before is open. */
    double[] levels() {
        return new double[] {covers, headOff, bottomEnd};
    }

    /** What it costs to get so deep from a closed engine. */
    public double upTo(Depth depth) {
        return switch (depth) {
            case NONE -> 0;
            case COVERS -> covers;
            case HEAD_OFF -> covers + headOff;
            case BOTTOM_END -> covers + headOff + bottomEnd;
        };
    }

    /** To look whether it is this one, once it is open. */
    double look() {
        return 10;
    }

    /** The least that a repair takes. */
    double least() {
        return 20;
    }
}
