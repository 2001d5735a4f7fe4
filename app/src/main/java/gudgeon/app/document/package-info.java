/**
 * What is read on paper and as drawings: the words of steps, reasons and lists; the strip card, build sheet and order sheet
 * as PDF; the engine as a layered drawing in SVG. Everything is a pure function of its arguments: dates are handed in,
 * the same arguments give the same bytes.
 *
 * <p>Nothing is decided here: plans and lists come from the core, cautions from the catalogue.
 */
@NullMarked
package gudgeon.app.document;

import org.jspecify.annotations.NullMarked;
