package gudgeon.app.format;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The engine files that come with the program: the folder {@code engines/} below the program's home. The home is the system
 * property {@value #HOME}; without it, the nearest folder upwards from the working directory that has one.
 */
public final class ShippedEngines {
    /** System property that names the program's home folder. */
    public static final String HOME = "gudgeon.home";

    private static final String ENDING = ".yaml";

    private ShippedEngines() {}

    /** The folder of the shipped engines; empty when there is none to be found. */
    public static Optional<Path> findFolder() {
        String home = System.getProperty(HOME);
        if (home != null && !home.isBlank()) {
            Path folder = Path.of(home, "engines");
            return Files.isDirectory(folder) ? Optional.of(folder) : Optional.empty();
        }
        for (@Nullable Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
            Path folder = at.resolve("engines");
            if (Files.isDirectory(folder)) {
                return Optional.of(folder);
            }
        }
        return Optional.empty();
    }

    /** Ids of the shipped engines, sorted; empty when there is no folder. */
    public static List<String> ids() {
        Optional<Path> folder = findFolder();
        if (folder.isEmpty()) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder.get())) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .filter(name -> name.endsWith(ENDING))
                    .map(name -> name.substring(0, name.length() - ENDING.length()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot list " + folder.get(), e);
        }
    }

    /** The file of a shipped engine, by its bare id such as {@code wren-160}. */
    public static Optional<Path> find(String id) {
        if (!id.matches("[a-z][a-z0-9-]*")) {
            return Optional.empty();
        }
        return findFolder().map(folder -> folder.resolve(id + ENDING)).filter(Files::isRegularFile);
    }

    /**
     * The file that a user means: an existing path as it is; otherwise a bare id of a shipped engine; otherwise the path as
     * given, so that reading it says what is wrong.
     */
    public static Path resolve(String pathOrId) {
        Path given = Path.of(pathOrId);
        if (Files.exists(given)) {
            return given;
        }
        return find(pathOrId).orElse(given);
    }
}
