/** What to buy for a job: from what was really destroyed and what the plan still destroys; what is ordered and what came. */
@NullMarked
package gudgeon.app.web.order;

import org.jspecify.annotations.NullMarked;
