/** Bolts and fits worked out without a job. Every sum is a form that is sent as an address, so that it can be kept and shared. */
@NullMarked
package gudgeon.app.web.sums;

import org.jspecify.annotations.NullMarked;
