package gudgeon.app.store;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/** Which file the books are in. */
public final class StoreFile {
    private static final String NAME = "books.sqlite";

    private StoreFile() {}

    /**
     * The file that was named, or the one in the user's data folder: {@code $XDG_DATA_HOME/gudgeon}, by default {@code
     * ~/.local/share/gudgeon}; on other systems where their programs keep data.
     *
     * @param named as typed; empty for the default
     * @throws IllegalArgumentException when it is no name that a file can have
     */
    public static Path of(String named, Map<String, String> environment) {
        try {
            return named.isBlank() ? folder(environment).resolve(NAME) : Path.of(named);
        } catch (InvalidPathException e) {
            throw new IllegalArgumentException("no file can be called '" + named + "'", e);
        }
    }

    private static Path folder(Map<String, String> environment) {
        String home = System.getProperty("user.home", ".");
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        String xdg = environment.getOrDefault("XDG_DATA_HOME", "");
        if (!xdg.isBlank() && Path.of(xdg).isAbsolute()) {
            return Path.of(xdg, "gudgeon");
        }
        if (system.contains("windows")) {
            return Path.of(environment.getOrDefault("LOCALAPPDATA", home), "gudgeon");
        }
        if (system.contains("mac")) {
            return Path.of(home, "Library", "Application Support", "gudgeon");
        }
        return Path.of(home, ".local", "share", "gudgeon");
    }
}
