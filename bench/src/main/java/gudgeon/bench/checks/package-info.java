/**
 * Tables of outside values, recomputed row by row: a row names a function and its arguments, and the code computes the value
 * from these alone. Nothing here knows a row's id or its expected value; the comparison stands in {@link
 * gudgeon.bench.checks.CheckRow}.
 */
@NullMarked
package gudgeon.bench.checks;

import org.jspecify.annotations.NullMarked;
