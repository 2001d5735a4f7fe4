package gudgeon.core.finding;

/** What stands behind a statement. */
public enum Support {
    /** A public source that was read. */
    READ,
    /** It follows from physics. */
    PHYSICS,
    /** Common practice of the trade. */
    PRACTICE,
    /** Judgement; the weakest. */
    JUDGEMENT
}
