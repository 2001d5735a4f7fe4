/**
 * What fits into the time there is: the steps of a plan up to a safe stop that is reached, closing up included, with a chance
 * that is asked for; what must be begun first because it then takes time by itself; and how it would be left.
 *
 * <p>It takes plans and a pace and returns data. It knows neither the clock nor what happened to one engine: the caller turns
 * a book into requests. The meaning of every word is docs/sessions.md.
 */
@NullMarked
package gudgeon.core.session;

import org.jspecify.annotations.NullMarked;
