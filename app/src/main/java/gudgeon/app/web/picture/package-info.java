/** Small pictures in pages, drawn from the engine file: the fasteners of a joint as they lie on their face. */
@NullMarked
package gudgeon.app.web.picture;

import org.jspecify.annotations.NullMarked;
