package gudgeon.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.core.book.Entry;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The process is killed at random moments: every acknowledged entry is there, none twice, no gap in the order. */
class KilledStoreTest {
    private static final int ROUNDS = 10;
    private static final long SEED = 20261003;

    @TempDir
    private Path folder = Path.of("");

    @Test
    void whatWasAcknowledgedSurvives() throws IOException, InterruptedException {
        Path file = folder.resolve("books.sqlite");
        Random random = new Random(SEED);
        List<String> acknowledged = new ArrayList<>();
        for (int round = 0; round < ROUNDS; round++) {
            acknowledged.addAll(untilKilled(file, round * 100_000L, random.nextInt(40), random.nextInt(20)));
            try (SqliteStore store = SqliteStore.open(file)) {
                List<Entry> entries = store.entries("job", 0);
                assertThat(entries).extracting(entry -> entry.id().toString()).containsAll(acknowledged);
                assertThat(entries).extracting(Entry::id).doesNotHaveDuplicates();
                assertThat(entries)
                        .extracting(Entry::seq)
                        .containsExactlyElementsOf(LongStream.rangeClosed(1, entries.size())
                                .boxed()
                                .toList());
            }
        }
        assertThat(acknowledged).as("seed %d", SEED).hasSizeGreaterThan(ROUNDS);
    }

    /** Ids that a child process had acknowledged when it was killed without warning. */
    private static List<String> untilKilled(Path file, long from, int afterLines, int moment)
            throws IOException, InterruptedException {
        Process child = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "--enable-native-access=ALL-UNNAMED",
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Appending.class.getName(),
                        file.toString(),
                        String.valueOf(from))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        List<String> ids = new ArrayList<>();
        try (BufferedReader out =
                new BufferedReader(new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8))) {
            assertThat(out.readLine()).isEqualTo("open");
            Thread killer = Thread.ofPlatform().unstarted(() -> {
                try {
                    Thread.sleep(moment);
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                }
                child.toHandle().destroyForcibly(); // its pipe is read to the end
            });
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                if (line.length() == 36) { // the last line may be cut short
                    ids.add(line);
                }
                if (ids.size() > afterLines && killer.getState() == Thread.State.NEW) {
                    killer.start();
                }
            }
            killer.join();
        }
        child.waitFor();
        return ids;
    }
}
