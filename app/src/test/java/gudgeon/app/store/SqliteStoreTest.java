package gudgeon.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gudgeon.core.book.Body;
import gudgeon.core.book.Entry;
import gudgeon.core.book.Ref;
import gudgeon.core.book.Strip;
import gudgeon.core.book.Word;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The store on a real file. */
class SqliteStoreTest {
    @TempDir
    private Path folder = Path.of("");

    private static Entry entry(String job, long number, Body body) {
        return Entry.of(
                new UUID(0x7000L, 0x8000_0000_0000_0000L | number),
                job,
                Entry.Stamp.at(OffsetDateTime.parse("2026-10-03T09:00:00+01:00")),
                body);
    }

    private SqliteStore open() {
        return SqliteStore.open(folder.resolve("deep/er/books.sqlite"));
    }

    @Test
    void whatIsAddedIsReadBackInOrderAfterOpeningAgain() {
        Entry note = entry("job", 1, new Word.Note("two\nlines, \"quoted\", N·m ✓"))
                .about(List.of(Ref.part("head"), new Ref(Ref.Sort.BAG, "3")));
        try (SqliteStore store = open()) {
            assertThat(store.add(List.of(note, entry("job", 2, new Word.Note("b")))))
                    .extracting(Entry::seq)
                    .containsExactly(1L, 2L);
        }
        try (SqliteStore store = open()) {
            assertThat(store.entries("job", 0).getFirst()).isEqualTo(note.numbered(1));
            assertThat(store.entries("job", 1)).extracting(Entry::seq).containsExactly(2L);
            assertThat(store.entries("other", 0)).isEmpty();
            assertThat(store.jobs()).containsExactly("job");
        }
    }

    @Test
    void sendingTwiceIsHarmlessAndAnotherThingUnderTheSameIdIsRefused() {
        try (SqliteStore store = open()) {
            Entry first = entry("job", 1, new Word.Note("a"));
            store.add(List.of(first));
            assertThat(store.add(List.of(first, entry("job", 2, new Word.Note("b")))))
                    .extracting(Entry::seq)
                    .containsExactly(1L, 2L);
            assertThatThrownBy(() -> store.add(
                            List.of(entry("job", 3, new Word.Note("c")), entry("job", 1, new Word.Note("other")))))
                    .isInstanceOf(IdTaken.class);
            assertThat(store.entries("job", 0)).as("nothing half done").hasSize(2);
        }
    }

    @Test
    void manyWritersGetOneOrderWithoutGaps() {
        try (SqliteStore store = open();
                SqliteStore other = open()) {
            List<Thread> writers = new ArrayList<>();
            for (int w = 0; w < 4; w++) {
                int from = w * 1000;
                SqliteStore into = w % 2 == 0 ? store : other;
                writers.add(Thread.ofPlatform()
                        .start(() -> IntStream.range(0, 25)
                                .forEach(n -> into.add(List.of(entry("job", from + n, new Strip.PutBack("j" + n)))))));
            }
            for (Thread writer : writers) {
                join(writer);
            }
            assertThat(store.entries("job", 0))
                    .extracting(Entry::seq)
                    .containsExactlyElementsOf(IntStream.rangeClosed(1, 100)
                            .mapToObj(Long::valueOf)
                            .toList());
        }
    }

    private static void join(Thread thread) {
        try {
            thread.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Test
    void photosAreKeptOnceByTheirHash() {
        try (SqliteStore store = open()) {
            EntryStore.Photo photo = new EntryStore.Photo("ab", "image/png", new byte[] {1, 2, 3});
            store.keep(photo);
            store.keep(photo);
            assertThat(store.findPhoto("ab").orElseThrow().bytes()).containsExactly(1, 2, 3);
            assertThat(store.findPhoto("cd")).isEmpty();
        }
    }

    @Test
    void aFileThatIsNoStoreIsToldInOneLine() throws IOException {
        Path file = folder.resolve("notes.txt");
        Files.writeString(file, "this is not a store, only a text that somebody named by mistake\n".repeat(40));
        assertThatThrownBy(() -> SqliteStore.open(file))
                .isInstanceOf(StoreFailed.class)
                .hasMessageContaining("notes.txt");
        assertThat(Files.readString(file)).startsWith("this is not a store");
    }

    @Test
    void theStoreIsInTheUsersDataFolderUnlessNamed() {
        assertThat(StoreFile.of("", Map.of("XDG_DATA_HOME", "/data"))).isEqualTo(Path.of("/data/gudgeon/books.sqlite"));
        assertThat(StoreFile.of("x.db", Map.of())).isEqualTo(Path.of("x.db"));
        assertThat(StoreFile.of("", Map.of()).toString()).contains("gudgeon");
    }
}
