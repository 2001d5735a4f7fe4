/**
 * What has to be bought because of a plan: everything single-use that it destroys, merged by specification; fluids by
 * circuit volume; sealants and thread-locking compounds of the joints undone. Counts and volumes only; wording, suppliers
 * and lead times are not its business.
 */
@NullMarked
package gudgeon.core.ordering;

import org.jspecify.annotations.NullMarked;
