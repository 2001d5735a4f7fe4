/** The book of a job: every entry in order, withdrawn ones struck through, and taking one back. */
@NullMarked
package gudgeon.app.web.history;

import org.jspecify.annotations.NullMarked;
