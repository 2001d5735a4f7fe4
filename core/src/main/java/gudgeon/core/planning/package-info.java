/**
 * What must be undone to reach a target, in which order, and the way back. Question 1 (what) is solved exactly by implicit
 * hitting sets over landmarks; question 2 (order) by a best-first search with an admissible bound. Definitions:
 * docs/planning.md. Sources: [HST2012], [BH2010].
 *
 * <p>It does not know what has happened to an engine: the caller hands over the joints already undone.
 */
@NullMarked
package gudgeon.core.planning;

import org.jspecify.annotations.NullMarked;
