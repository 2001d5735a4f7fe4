/**
 * Torque, angle and preload of bolted joints, threads and their strength, wrenches and adaptors, tightening patterns, and
 * where to start again after an interruption. Standards: ISO 68-1, 261, 724, 898-1, 965, ASME B1.1, VDI 2230. Knows no job.
 */
@NullMarked
package gudgeon.core.bolting;

import org.jspecify.annotations.NullMarked;
