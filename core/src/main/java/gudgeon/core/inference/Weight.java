package gudgeon.core.inference;

/** How much evidence weighs. Decibans: ten times the decimal logarithm of a ratio of likelihoods. Source: [GOOD]. */
public final class Weight {
    private Weight() {}

    /** Decibans of a ratio above 0; 10 for a factor of ten, negative when it speaks against. */
    public static double decibans(double ratio) {
        return 10 * Math.log10(ratio);
    }

    /** Bits of uncertainty in chances that sum to one. */
    public static double entropy(double... chances) {
        double sum = 0;
        for (double chance : chances) {
            if (chance > 0) {
                sum -= chance * Math.log(chance);
            }
        }
        return sum / Math.log(2);
    }

    /**
     * Bits that an outcome tells on average about a state: the uncertainty before less the mean uncertainty after.
     *
     * @param prior chances of the states
     * @param outcome for each state the chances of the outcomes
     */
    public static double information(double[] prior, double[][] outcome) {
        double bits = entropy(prior);
        for (int o = 0; o < outcome[0].length; o++) {
            double chance = 0;
            double[] after = new double[prior.length];
            for (int s = 0; s < prior.length; s++) {
                after[s] = prior[s] * outcome[s][o];
                chance += after[s];
            }
            if (chance > 0) {
                for (int s = 0; s < prior.length; s++) {
                    after[s] /= chance;
                }
                bits -= chance * entropy(after);
            }
        }
        return bits;
    }
}
