package gudgeon.core.finding;

/**
 * The unknown healthy compression of this engine as it is cranked now: points of the logarithm of gauge pressure, Pa, with their
 * chances. A run that was done badly makes it lower for all cylinders together.
 *
 * @param ln evenly spaced
 * @param chance sums to one on the whole grid
 * @param badRun for each point the chance that the run was done badly, were it this one
 */
record HealthyGrid(double[] ln, double[] chance, double[] badRun) {
    static final double STEP = 0.04;
    private static final double PLAIN_RATIO_EXPONENT = 1.28;
    private static final double GAUGE_AT_NINE_AND_A_HALF = 12.0e5;

    static HealthyGrid of(EngineFacts facts, Physics.Compression physics, boolean decompressor) {
        double stated = facts.healthy().compression().orElseGet(() -> usual(facts));
        double scatter = !facts.healthy().compression().isPresent()
                ? physics.guessed()
                : facts.healthy().known() ? physics.known() : physics.stated();
        double centre = Math.log(stated);
        double low = centre - physics.badRunBy() - 2.5 * physics.badRunScatter() - (decompressor ? 0.7 : 0);
        double high = centre + 3 * scatter;
        int points = (int) Math.ceil((high - low) / STEP) + 1;
        double[] ln = new double[points];
        double[] good = new double[points];
        double[] bad = new double[points];
        double goodSum = 0;
        double badSum = 0;
        for (int i = 0; i < points; i++) {
            ln[i] = low + i * STEP;
            good[i] = decompressor ? 1 : bell((ln[i] - centre) / scatter);
            bad[i] = bell((ln[i] - centre + physics.badRunBy()) / Math.hypot(physics.badRunScatter(), scatter));
            goodSum += good[i];
            badSum += bad[i];
        }
        double[] chance = new double[points];
        double[] badRun = new double[points];
        for (int i = 0; i < points; i++) {
            double fine = (1 - physics.badRun()) * good[i] / goodSum;
            double poor = physics.badRun() * bad[i] / badSum;
            chance[i] = fine + poor;
            badRun[i] = poor / chance[i];
        }
        return new HealthyGrid(ln, chance, badRun);
    }

    /** The points from one to another, that one left out; their chances are kept as they are. */
    HealthyGrid between(int from, int to) {
        return new HealthyGrid(
                java.util.Arrays.copyOfRange(ln, from, to),
                java.util.Arrays.copyOfRange(chance, from, to),
                java.util.Arrays.copyOfRange(badRun, from, to));
    }

    /** A usual figure when none is given: from the compression ratio and the air's pressure. */
    static double usual(EngineFacts facts) {
        double scale = facts.cranking().ambient() / 101325;
        double petrol = (GAUGE_AT_NINE_AND_A_HALF + 101325) * Math.pow(facts.ratio() / 9.5, PLAIN_RATIO_EXPONENT);
        return (petrol - 101325) * scale;
    }

    private static double bell(double z) {
        return Math.exp(-z * z / 2);
    }
}
