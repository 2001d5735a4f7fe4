package gudgeon.app.cli;

import gudgeon.app.desk.Saving;
import gudgeon.app.document.Issue;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.function.Supplier;

/** Writes papers where the person wants them, dated today. */
final class Papers {
    private final Screen screen;

    Papers(Screen screen) {
        this.screen = screen;
    }

    static Issue issue() {
        return new Issue("", LocalDate.now(ZoneId.systemDefault()).toString());
    }

    /** Writes bytes into a file and says so. */
    void write(String file, Supplier<byte[]> bytes) {
        Saving.bytes(path(file), Waiting.on(screen, "writing " + file, bytes));
        screen.err().println("written: " + file);
    }

    /** Writes text into a file and says so, or onto the screen when the file is {@code -}. */
    void writeText(String file, Supplier<String> text) {
        if (file.equals("-")) {
            screen.out().print(Waiting.on(screen, "drawing", text));
        } else {
            Saving.text(path(file), Waiting.on(screen, "writing " + file, text));
            screen.err().println("written: " + file);
        }
    }

    static Path path(String file) {
        try {
            return Path.of(file);
        } catch (InvalidPathException e) {
            throw new java.io.UncheckedIOException(
                    "cannot write " + file, new java.io.IOException("no file can have this name", e));
        }
    }
}
