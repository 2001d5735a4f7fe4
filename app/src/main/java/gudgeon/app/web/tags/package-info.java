/** Tags to print and hang on the key, the wheel or the lever. */
@NullMarked
package gudgeon.app.web.tags;

import org.jspecify.annotations.NullMarked;
