/** Photos of a job: taking one, about a part or a joint, and showing it. */
@NullMarked
package gudgeon.app.web.photos;

import org.jspecify.annotations.NullMarked;
