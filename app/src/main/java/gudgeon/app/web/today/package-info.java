/** Today's card for the time there is, what to have ready before the next ones, and coming back after a pause. */
@NullMarked
package gudgeon.app.web.today;

import org.jspecify.annotations.NullMarked;
