/** The bolts of a job, joint by joint: stages, wrench, preload, pattern, and how often they were tightened. */
@NullMarked
package gudgeon.app.web.bolts;

import org.jspecify.annotations.NullMarked;
