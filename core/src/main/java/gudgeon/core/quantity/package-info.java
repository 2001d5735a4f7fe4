/**
 * Physical quantities as the rest of the program holds them: one small record each, metric inside, carrying the text that
 * the user typed so that digits are never invented or lost. Reading and writing other units happens at the edge of the
 * program (a JSR-385 library does the factors); nothing here converts by hand.
 */
@NullMarked
package gudgeon.core.quantity;

import org.jspecify.annotations.NullMarked;
