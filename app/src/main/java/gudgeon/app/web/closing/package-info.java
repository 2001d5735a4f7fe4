/** Closing up: the ledgers of fasteners, openings, rags and litres, and the gate that refuses until they balance. */
@NullMarked
package gudgeon.app.web.closing;

import org.jspecify.annotations.NullMarked;
