/**
 * What <em>happened</em> to one engine: entries that are only ever added, and the state of the job as a pure fold over them.
 * A mistake is corrected by a later entry that withdraws or replaces an earlier one; a withdrawal can be withdrawn.
 *
 * <p>Nothing here reads a clock or makes an id: both are arguments. Values of java.time are used as values only, so that a
 * time keeps the offset under which it was written. The meaning of each entry is in docs/book.md.
 */
@NullMarked
package gudgeon.core.book;

import org.jspecify.annotations.NullMarked;
