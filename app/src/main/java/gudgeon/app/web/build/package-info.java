/** The way back: all of it with what each step waits for, and one step at a time at the bench, fastener by fastener. */
@NullMarked
package gudgeon.app.web.build;

import org.jspecify.annotations.NullMarked;
