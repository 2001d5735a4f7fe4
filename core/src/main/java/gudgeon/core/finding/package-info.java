/**
 * What is wrong, how sure, which test next and how deep to open: exact inference over faults and readings, with reasons.
 * Opening costs come in as a table; the planner is not known here.
 */
@NullMarked
package gudgeon.core.finding;

import org.jspecify.annotations.NullMarked;
