package gudgeon.core.finding;

import java.util.List;

/**
 * Something wrong with more than one cylinder, in one grade: what the engine slice is made of.
 *
 * @param fault its kind
 * @param where its place
 * @param identity the same for all grades of one fault at one place
 * @param odds chance over chance of not having it, with the share of the grade
 * @param options for each cylinder what it may be like with it, each with its chance; empty when its figures do not change
 */
record Member(Fault fault, Where where, int identity, double odds, List<List<Option>> options) {
    Member {
        options = options.stream().map(List::copyOf).toList();
    }

    /**
     * One way a cylinder may be.
     *
     * @param number of the condition in the model, from 1
     * @param core the same, or 0 when it does nothing but shift compression
     * @param shift of the logarithm of compression, when it does nothing else
     */
    record Option(double chance, Condition condition, int number, int core, double shift) {}

    boolean touches(int cylinder) {
        return where.cylinders().contains(cylinder + 1);
    }

    boolean changesFigures(int cylinder) {
        return !options.get(cylinder).isEmpty();
    }
}
