/** Published and synthetic sequential ordering problems: reading them, seeing contexts in them, solving, and an independent replay of every answer. */
@NullMarked
package gudgeon.bench.ordering;

import org.jspecify.annotations.NullMarked;
