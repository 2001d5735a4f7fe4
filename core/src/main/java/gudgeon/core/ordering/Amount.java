package gudgeon.core.ordering;

/** How much of something is bought. */
public sealed interface Amount {
    /**
     * A number of pieces.
     *
     * @param count at least one
     */
    record Pieces(int count) implements Amount {
        public Pieces {
            if (count < 1) {
                throw new IllegalArgumentException("an order line counts at least one piece, not " + count);
            }
        }
    }

    /**
     * A volume of fluid.
     *
     * @param needed_l what the circuits hold together, litres; greater than 0
     * @param buy_l what to have at hand, litres: {@code needed_l} rounded up, see {@link #rounded}
     * @param complete false when the capacity of at least one of the circuits is not known, so that more is needed
     */
    record Litres(double needed_l, double buy_l, boolean complete) implements Amount {
        public Litres {
            if (!(needed_l > 0) || buy_l < needed_l - 1e-9) {
                throw new IllegalArgumentException(
                        "a volume is above 0 and bought in full, not " + buy_l + " of " + needed_l);
            }
        }
    }

    /**
     * As much as the work takes: a sealant or locking compound, or a fluid whose circuit does not say what it holds.
     *
     * @param places how many joints or circuits it is for, at least one
     */
    record AsNeeded(int places) implements Amount {
        public AsNeeded {
            if (places < 1) {
                throw new IllegalArgumentException("something is needed for at least one place, not " + places);
            }
        }
    }

    /**
     * The volume to have at hand for a circuit volume: up to the next tenth of a litre below one litre, up to the next half
     * litre from there on.
     *
     * @param needed_l litres, greater than 0
     */
    static Litres rounded(double needed_l, boolean complete) {
        double stepsPerLitre = needed_l < 1 ? 10 : 2;
        double buy_l = Math.ceil(needed_l * stepsPerLitre - 1e-9) / stepsPerLitre;
        return new Litres(needed_l, buy_l, complete);
    }
}
