/**
 * Volumes, compression and the motion of crank, piston and valves: arithmetic of an engine's shape and timing. Knows no
 * readings and no job.
 */
@NullMarked
package gudgeon.core.geometry;

import org.jspecify.annotations.NullMarked;
