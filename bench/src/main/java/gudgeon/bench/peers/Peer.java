package gudgeon.bench.peers;

import gudgeon.core.planning.Sequencer;

/** A solver of sequencing problems in numbers. */
public interface Peer {
    /** What it is called in tables. */
    String name();

    /** Solves a problem within about so many seconds. */
    Result solve(Sequencer.Numbers numbers, double seconds);

    /**
     * What a solver found.
     *
     * @param value least cost found; -1 when nothing was
     * @param lowerBound what it says no sequence is below; -1 when it says nothing
     * @param proved whether it says that the value is the least
     */
    record Result(long value, long lowerBound, boolean proved) {
        /** Nothing was found or proved. */
        public static final Result NOTHING = new Result(-1, -1, false);
    }
}
