/** Measurements of Gudgeon: not shipped. Only here are there clocks; everything that is measured lives in core. */
@NullMarked
package gudgeon.bench;

import org.jspecify.annotations.NullMarked;
