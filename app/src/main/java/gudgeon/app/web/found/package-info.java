/** How a joint was found: count, sizes, where each sat, the bag, what differs from the file, how a hose or loom runs. */
@NullMarked
package gudgeon.app.web.found;

import org.jspecify.annotations.NullMarked;
