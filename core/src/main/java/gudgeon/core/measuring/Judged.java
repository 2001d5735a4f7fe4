package gudgeon.core.measuring;

import java.util.Optional;

/**
 * Something derived, and what it is against its limit.
 *
 * @param of what it is of: bore 3, main 2, the face
 * @param derived the value
 * @param verdict empty where no limit was given
 */
public record Judged(String of, Derived derived, Optional<Verdict> verdict) {}
