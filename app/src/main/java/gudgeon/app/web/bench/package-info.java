/** The bench: one step at a time, read at arm's length with gloves on. Large text, few words, the caution before the action. */
@NullMarked
package gudgeon.app.web.bench;

import org.jspecify.annotations.NullMarked;
