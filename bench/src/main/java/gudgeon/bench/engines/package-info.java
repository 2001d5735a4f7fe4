/** Shipped and generated engines: every target planned, timed, and put in tables and plots. */
@NullMarked
package gudgeon.bench.engines;

import org.jspecify.annotations.NullMarked;
