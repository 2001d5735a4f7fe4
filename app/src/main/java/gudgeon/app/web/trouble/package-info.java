/** Trouble with a fastener: what it is, what to try, gentlest first with its cautions, and what it changes when it is solved or given up. */
@NullMarked
package gudgeon.app.web.trouble;

import org.jspecify.annotations.NullMarked;
