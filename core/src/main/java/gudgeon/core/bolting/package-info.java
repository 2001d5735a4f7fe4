/**
 * Torque, angle and preload of bolted joints, threads and their strength, wrenches and adaptors, tightening patterns, and whether
 * a bolt may be used once more. Standards: ISO 68-1, 261, 724, 898-1, 965-1, 6789, ASME B1.1, PCC-1, VDI 2230. Lengths in
 * millimetres, forces in newtons, torques in newton metres, stresses in megapascals, as the names say. Knows no job; where to
 * start again after an interruption is {@code planning.Resume}.
 */
@NullMarked
package gudgeon.core.bolting;

import org.jspecify.annotations.NullMarked;
