package gudgeon.core.engine;

/**
 * How the time to undo a joint comes about, all in whole seconds.
 *
 * @param fastenerSeconds fasteners times the time of their kind, or the kind of the joint, times its difficulty
 * @param seizureChance chance that it is seized, 0 to 1
 * @param seizureSeconds time lost when it is
 * @param risk what happens when it goes wrong, for instance "snaps"; empty when nothing is said
 */
public record UndoTime(long fastenerSeconds, double seizureChance, long seizureSeconds, String risk) {
    public UndoTime {
        if (fastenerSeconds < 0 || seizureSeconds < 0 || !(seizureChance >= 0 && seizureChance <= 1)) {
            throw new IllegalArgumentException("times must not be negative and a chance lies between 0 and 1");
        }
    }

    /** Expected loss by seizure, rounded half up. */
    public long expectedSeizureSeconds() {
        return Math.round(seizureChance * seizureSeconds);
    }

    /** Time plus expected loss: the cost of the joint in the question what must be undone. */
    public long expectedSeconds() {
        return fastenerSeconds + expectedSeizureSeconds();
    }
}
