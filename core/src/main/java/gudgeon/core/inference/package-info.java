/**
 * Exact reasoning with discrete chances: networks of variables, causes joined by noisy-OR, the best order of repairs, the
 * weight of evidence. Knows nothing of engines. Standards: decibans as in [GOOD]; noisy-OR with inclusion and exclusion as in
 * [HECKERMAN]; expected cost of repair as in [TROUBLE].
 */
@NullMarked
package gudgeon.core.inference;

import org.jspecify.annotations.NullMarked;
