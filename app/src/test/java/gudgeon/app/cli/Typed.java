package gudgeon.app.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Arrays;

/** What came of a command line: exit code and both outputs. */
record Typed(int exit, String out, String err) {
    /** Runs a command as if typed, without a terminal. */
    static Typed run(String... words) {
        return run(96, false, words);
    }

    static Typed run(int width, boolean colour, String... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Screen screen = new Screen(new PrintWriter(out), new PrintWriter(err), width, colour, false);
        int exit = Main.run(screen, words);
        return new Typed(exit, out.toString(), err.toString());
    }

    /** Splits at blanks; for words without quotes. */
    static Typed line(String line) {
        return run(Arrays.stream(line.split(" ")).filter(word -> !word.isEmpty()).toArray(String[]::new));
    }
}
