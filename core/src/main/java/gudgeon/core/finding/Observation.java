package gudgeon.core.finding;

import java.util.OptionalDouble;

/** One thing that was seen or measured. */
public sealed interface Observation {
    /** The test that gave it. */
    String test();

    /** The cylinder, from 1; 0 for the engine. */
    int cylinder();

    /** Which time the test was done there: readings of one sitting are good or bad together. From 1. */
    int sitting();

    /**
     * Something that is there or not.
     *
     * @param finding id of its kind
     * @param there whether it is
     */
    record Seen(String test, String finding, int cylinder, boolean there, int sitting) implements Observation {}

    /**
     * A figure.
     *
     * @param figure what kind
     * @param value pressure Pa (gauge), loss 0 to 1, or a plain ratio
     * @param oil volume of oil put in, m³; for a wet ratio
     * @param orifice of the leak-down tester, effective diameter m; empty when it was not told
     * @param supply gauge pressure of the leak-down tester's regulator, Pa
     */
    record Measured(
            String test,
            TestKind.Figure figure,
            int cylinder,
            double value,
            double oil,
            OptionalDouble orifice,
            double supply,
            int sitting)
            implements Observation {}
}
