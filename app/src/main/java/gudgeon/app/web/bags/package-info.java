/** Bags and places: where every fastener and part is, what must be marked, labels to print. */
@NullMarked
package gudgeon.app.web.bags;

import org.jspecify.annotations.NullMarked;
