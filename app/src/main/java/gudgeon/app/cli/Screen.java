package gudgeon.app.cli;

import java.io.OutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * Where answers and messages go.
 *
 * @param out answers
 * @param err messages about the run
 * @param width columns for text
 * @param colour whether answers may be coloured
 * @param live whether messages may show progress, because a person sees them
 */
record Screen(PrintWriter out, PrintWriter err, int width, boolean colour, boolean live) {
    private static final int NARROWEST = 60;
    private static final int WIDEST = 100;
    private static final int WITHOUT_TERMINAL = 96;

    /** The screen of this process: the launcher says what is a terminal, and how wide it is. */
    static Screen ofProcess() {
        return of(System.getProperty("gudgeon.screen", ""), System.getenv(), System.out, System.err);
    }

    static Screen of(String said, Map<String, String> environment, PrintStream out, PrintStream err) {
        List<String> words = Arrays.asList(said.split(",", -1));
        boolean terminal = words.contains("out");
        boolean plain = !environment.getOrDefault("NO_COLOR", "").isEmpty()
                || environment.getOrDefault("TERM", "").equals("dumb");
        return new Screen(
                writer(out), writer(err), width(words, terminal), terminal && !plain, words.contains("err"));
    }

    private static int width(List<String> words, boolean terminal) {
        if (!terminal) {
            return WITHOUT_TERMINAL;
        }
        int columns = words.stream()
                .filter(word -> word.matches("[0-9]{1,4}"))
                .mapToInt(Integer::parseInt)
                .findFirst()
                .orElse(80);
        return Math.clamp(columns, NARROWEST, WIDEST);
    }

    private static PrintWriter writer(OutputStream stream) {
        return new PrintWriter(stream, false, StandardCharsets.UTF_8);
    }

    void flush() {
        out.flush();
        err.flush();
    }
}
