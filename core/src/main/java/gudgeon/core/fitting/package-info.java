/**
 * Who goes where: shims, shells, pistons, rings, weights and bolts from a mixed tin, assigned exactly, with alternatives and
 * what is gained over the parts as they come. Knows no job.
 */
@NullMarked
package gudgeon.core.fitting;

import org.jspecify.annotations.NullMarked;
