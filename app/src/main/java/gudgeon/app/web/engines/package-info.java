/** The engine file as pages: parts, joints, circuits, features, the drawing; search. Changes nothing. */
@NullMarked
package gudgeon.app.web.engines;

import org.jspecify.annotations.NullMarked;
