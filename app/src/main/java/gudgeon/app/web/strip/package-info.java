/** The strip as a question: what must come off to reach this, in what order, why, and what if that will not come. */
@NullMarked
package gudgeon.app.web.strip;

import org.jspecify.annotations.NullMarked;
