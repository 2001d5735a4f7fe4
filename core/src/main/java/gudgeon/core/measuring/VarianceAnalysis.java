package gudgeon.core.measuring;

import java.math.BigDecimal;

/**
 * The one-way analysis of variance: readings in groups (one group a taker, an instrument, or a part), and how much of their
 * spread lies between the groups. Sums are exact for the decimals read. Source: [STRD], analysis of variance.
 */
public final class VarianceAnalysis {
    private final int groups;
    private final int readings;
    private final BigDecimal between;
    private final BigDecimal within;

    private VarianceAnalysis(int groups, int readings, BigDecimal between, BigDecimal within) {
        this.groups = groups;
        this.readings = readings;
        this.between = between;
        this.within = within;
    }

    /**
     * The analysis of some groups.
     *
     * @param groups at least two, none empty, more readings than groups
     * @throws IllegalArgumentException when there are too few groups or readings, or one is not finite
     */
    public static VarianceAnalysis of(double[][] groups) {
        if (groups.length < 2) {
            throw new IllegalArgumentException(
                    "an analysis of variance needs at least two groups, not " + groups.length);
        }
        BigDecimal total = BigDecimal.ZERO;
        BigDecimal squares = BigDecimal.ZERO;
        BigDecimal groupSquares = BigDecimal.ZERO;
        int count = 0;
        for (double[] group : groups) {
            if (group.length == 0) {
                throw new IllegalArgumentException("a group without a reading");
            }
            BigDecimal[] values = Decimal.of(group);
            BigDecimal sum = Decimal.sum(values);
            total = total.add(sum);
            squares = squares.add(Decimal.sumOfProducts(values, values));
            groupSquares = groupSquares.add(Decimal.over(sum.multiply(sum), group.length));
            count += group.length;
        }
        if (count <= groups.length) {
            throw new IllegalArgumentException("at least one group needs a second reading");
        }
        return new VarianceAnalysis(
                groups.length,
                count,
                groupSquares.subtract(Decimal.over(total.multiply(total), count)),
                squares.subtract(groupSquares));
    }

    /** The sum of squares between the groups. */
    public double betweenSquares() {
        return between.doubleValue();
    }

    /** The sum of squares within the groups. */
    public double withinSquares() {
        return within.doubleValue();
    }

    /** Groups less one. */
    public int betweenDegreesOfFreedom() {
        return groups - 1;
    }

    /** Readings less groups. */
    public int withinDegreesOfFreedom() {
        return readings - groups;
    }

    /**
     * The mean square between over that within.
     *
     * @throws IllegalArgumentException when the readings of each group are all equal
     */
    public double f() {
        if (within.signum() == 0) {
            throw new IllegalArgumentException("no spread within the groups: F has no value");
        }
        return Decimal.over(
                        between.multiply(BigDecimal.valueOf(withinDegreesOfFreedom())),
                        within.multiply(BigDecimal.valueOf(betweenDegreesOfFreedom())))
                .doubleValue();
    }

    /** The standard deviation within the groups: the repeatability. */
    public double residualStandardDeviation() {
        return Decimal.root(Decimal.over(within, withinDegreesOfFreedom()));
    }

    /**
     * The standard deviation of the groups' own levels, zero when the spread between is no more than chance; for groups of one
     * size. Source: [STRD], common practice in gauge studies.
     *
     * @param groupSize readings in each group
     */
    public double groupStandardDeviation(int groupSize) {
        double excess = betweenSquares() / betweenDegreesOfFreedom() - withinSquares() / withinDegreesOfFreedom();
        return Math.sqrt(Math.max(0, excess / groupSize));
    }

    /** The share of the total sum of squares that lies between the groups. */
    public double rSquared() {
        return Decimal.over(between, between.add(within)).doubleValue();
    }
}
