package gudgeon.core.engine;

/** One elementary fact that an access or lift condition asks for. */
public sealed interface Literal {
    /** The id of the part or joint that the fact is about. */
    String id();

    /** The part is out of the way (of a joint), or moved (for a lift or a ready operation without a joint). */
    record PartAway(String id) implements Literal {}

    /** The joint is undone. */
    record JointUndone(String id) implements Literal {}
}
