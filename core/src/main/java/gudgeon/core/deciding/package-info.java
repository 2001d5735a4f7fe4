/**
 * Reuse or renew, stop or go: lives as distributions, costs as expectations and bands, break-evens.
 */
@NullMarked
package gudgeon.core.deciding;

import org.jspecify.annotations.NullMarked;
