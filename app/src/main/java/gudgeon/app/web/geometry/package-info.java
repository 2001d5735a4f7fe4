/** Shape and timing of an engine, from numbers typed into a form; needs no job and changes nothing. */
@NullMarked
package gudgeon.app.web.geometry;

import org.jspecify.annotations.NullMarked;
