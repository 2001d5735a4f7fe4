package gudgeon.bench.ordering;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What others are known to have found, from a file {@code best-known.csv} with the columns instance, set, nodes, best_known,
 * proved_optimal and more.
 */
public final class BestKnown {
    /**
     * @param set which collection the instance is of
     * @param value text as it stands; empty when none is known
     * @param proved y, n or ?
     */
    public record Entry(String set, String value, String proved) {}

    private BestKnown() {}

    /** By instance; empty when the folder has no such file. */
    public static Map<String, Entry> read(Path folder) throws IOException {
        Map<String, Entry> entries = new LinkedHashMap<>();
        Path file = folder.resolve("best-known.csv");
        if (Files.isRegularFile(file)) {
            for (String line : Files.readAllLines(file)) {
                String[] cells = line.split(",", 6);
                if (cells.length >= 5 && !cells[0].equals("instance")) {
                    entries.put(cells[0], new Entry(cells[1], cells[3], cells[4]));
                }
            }
        }
        return entries;
    }
}
