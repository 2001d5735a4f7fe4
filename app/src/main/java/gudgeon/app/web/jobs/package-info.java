/** The jobs: which there are, a new one, where one stands, and its strip with what is done marked on it. */
@NullMarked
package gudgeon.app.web.jobs;

import org.jspecify.annotations.NullMarked;
