/** The engine of a job put right: a part or joint that its file lacks, a joint that is otherwise, the file saved as one's own. */
@NullMarked
package gudgeon.app.web.correction;

import org.jspecify.annotations.NullMarked;
