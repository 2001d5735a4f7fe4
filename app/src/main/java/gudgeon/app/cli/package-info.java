/**
 * The command line: commands, their help, exit codes, and how answers read on a terminal. Asks the desk and decides nothing.
 *
 * <p>Answers go to the standard output, everything about the run to the standard error. No stack trace is ever shown.
 */
@NullMarked
package gudgeon.app.cli;

import org.jspecify.annotations.NullMarked;
