/**
 * The questions that can be asked, one class for each: it takes arguments as a person wrote them, loads the engine, asks the
 * core, and returns data. What can be asked here can be asked from every front of the program alike.
 *
 * <p>No wording and no printing: that belongs to the front. A name that means nothing is an answer, not an exception.
 */
@NullMarked
package gudgeon.app.desk;

import org.jspecify.annotations.NullMarked;
