package gudgeon.app.cli;

/** Exit codes of every command. */
final class Exit {
    /** Done. */
    static final int DONE = 0;
    /** The file has faults, or a name means nothing in it. */
    static final int INPUT = 1;
    /** The command line was wrong. */
    static final int USAGE = 2;
    /** There is no plan; the answer says why. */
    static final int BLOCKED = 3;
    /** The program or the machine failed: a file could not be written, memory ran out. */
    static final int FAILED = 4;

    private Exit() {}
}
