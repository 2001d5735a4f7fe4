package gudgeon.bench.ordering;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A sequential ordering problem as published: node 0 begins, the last node ends; entry [i][j] is the cost of j right after
 * i, or -1: j must come before i.
 *
 * @param name name of the file without its ending
 * @param entries n x n
 */
public record SopInstance(String name, int[][] entries) {
    /** Checks the square and keeps a copy of it. */
    public SopInstance {
        entries = Arrays.stream(entries).map(int[]::clone).toArray(int[][]::new);
        if (entries.length < 2) {
            throw new IllegalArgumentException(name + " has " + entries.length + " nodes. At least two are needed.");
        }
        for (int[] row : entries) {
            if (row.length != entries.length || Arrays.stream(row).anyMatch(entry -> entry < -1)) {
                throw new IllegalArgumentException(name + " is not a square of entries of -1 and more");
            }
        }
    }

    /** Number of nodes, the first and the last counted. */
    public int size() {
        return entries.length;
    }

    /** By pair: whether the first must come before the second. */
    public boolean[][] precedes() {
        boolean[][] precedes = new boolean[size()][size()];
        for (int i = 0; i < size(); i++) {
            for (int j = 0; j < size(); j++) {
                precedes[j][i] = entries[i][j] == -1;
            }
        }
        return precedes;
    }

    /**
     * Reads a file with or without a header.
     *
     * @throws IllegalArgumentException when it holds no such problem, naming the file
     */
    public static SopInstance read(Path file) throws IOException {
        String name = String.valueOf(file.getFileName()).replaceFirst("\\.sop$", "");
        return parse(name, Files.readAllLines(file));
    }

    /** Reads lines with or without a header; a number of nodes on a line of its own before the entries is passed over. */
    public static SopInstance parse(String name, List<String> lines) {
        boolean header = lines.stream().anyMatch(line -> line.strip().startsWith("EDGE_WEIGHT_SECTION"));
        List<Integer> numbers = new ArrayList<>();
        boolean inside = !header;
        for (String line : lines) {
            String text = line.strip();
            if (text.startsWith("EDGE_WEIGHT_SECTION")) {
                inside = true;
            } else if (text.equals("EOF")) {
                break;
            } else if (inside && !text.isEmpty()) {
                add(name, text, numbers);
            }
        }
        int n = (int) Math.round(Math.sqrt(numbers.size()));
        if (n * n != numbers.size()) {
            n = (int) Math.round(Math.sqrt(numbers.size() - 1.0));
            if (n * n != numbers.size() - 1 || numbers.getFirst() != n) {
                throw new IllegalArgumentException(
                        name + " has " + numbers.size() + " entries, which is no square. Maybe it was cut off?");
            }
            numbers.removeFirst();
        }
        int[][] entries = new int[n][n];
        for (int i = 0; i < n * n; i++) {
            entries[i / n][i % n] = numbers.get(i);
        }
        return new SopInstance(name, entries);
    }

    private static void add(String name, String text, List<Integer> numbers) {
        for (String word : text.split("\\s+")) {
            try {
                numbers.add(Integer.parseInt(word));
            } catch (NumberFormatException e) {
                throw new IllegalArgumentException(name + ": \"" + word + "\" stands where a whole number should", e);
            }
        }
    }
}
