/** What to lay out: the tools, new pieces and places of the steps that fit into the time there is. */
@NullMarked
package gudgeon.app.web.toolbox;

import org.jspecify.annotations.NullMarked;
