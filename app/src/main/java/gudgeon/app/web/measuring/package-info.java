/** What is left to measure, and a sheet for each feature: readings in, values and verdicts out. */
@NullMarked
package gudgeon.app.web.measuring;

import org.jspecify.annotations.NullMarked;
