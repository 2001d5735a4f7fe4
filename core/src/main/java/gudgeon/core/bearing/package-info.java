/**
 * Limits and fits (ISO 286), press fits (Lamé) and the oil film of plain bearings (the Reynolds equation, compared with
 * Raimondi and Boyd's tables).
 */
@NullMarked
package gudgeon.core.bearing;

import org.jspecify.annotations.NullMarked;
