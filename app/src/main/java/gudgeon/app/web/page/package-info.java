/**
 * What every page stands on: the sheet with its head and title block, the colours a person has chosen, the gate that every
 * request passes, forms that keep what was typed, refusals that say what would be right, work that goes on in the background.
 *
 * <p>No page of its own and no knowledge of engines or jobs.
 */
@NullMarked
package gudgeon.app.web.page;

import org.jspecify.annotations.NullMarked;
