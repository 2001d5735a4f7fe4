package gudgeon.core.engine;

/**
 * If both operations are in a plan, {@code first} comes before {@code then}.
 *
 * @param first id of a joint or ready operation
 * @param then id of a joint or ready operation
 * @param why the reason, in the words of the file or of the rule that derived it
 */
public record Precedence(String first, String then, String why) {}
