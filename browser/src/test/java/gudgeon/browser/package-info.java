/**
 * The pages in a real browser: what a person meets. Few and real: every page in every look, keyboard, narrow screens, no
 * scripts. {@link gudgeon.browser.Bench} starts the server on a free port with a store of its own.
 */
@NullMarked
package gudgeon.browser;

import org.jspecify.annotations.NullMarked;
