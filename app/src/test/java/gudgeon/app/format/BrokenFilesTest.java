package gudgeon.app.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Broken files. Those in plain text lie in src/test/resources/broken, and each says in its first lines, as
 * {@code # expect line:column: words}, which faults must be found and where; the places were set by hand in the text before
 * the reader ever saw it. The rest is made here.
 */
class BrokenFilesTest {
    private static final Path FOLDER = Path.of("src/test/resources/broken");
    private static final Duration BOUND = Duration.ofSeconds(60);

    static Stream<Path> files() throws IOException {
        try (Stream<Path> list = Files.list(FOLDER)) {
            return list.sorted().toList().stream();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("files")
    void everyExpectedFaultIsFoundInItsPlace(Path file) throws IOException {
        List<String> expected = Files.readAllLines(file).stream()
                .takeWhile(line -> line.startsWith("# expect "))
                .map(line -> line.substring("# expect ".length()))
                .toList();
        assertThat(expected).as("%s says what is expected", file).isNotEmpty();
        List<Problem> problems = faults(EngineFile.read(file));
        for (String expectation : expected) {
            int colon = expectation.indexOf(": ");
            String place = expectation.substring(0, colon);
            String words = expectation.substring(colon + 2);
            assertThat(problems)
                    .as("%s in %s", expectation, texts(problems))
                    .anyMatch(problem -> (problem.line() + ":" + problem.column()).equals(place)
                            && problem.text().contains(words));
        }
        assertThat(problems).allMatch(problem -> problem.file().equals(file.toString()));
    }

    @Test
    void thereAreManyOfThem() throws IOException {
        assertThat(files().count()).isGreaterThan(60);
    }

    private static List<Problem> faults(Reading reading) {
        return switch (reading) {
            case Reading.Faulty faulty -> faulty.problems();
            case Reading.Sound sound ->
                Assertions.fail("no fault found in " + sound.engine().identity().id());
        };
    }

    private static List<String> texts(List<Problem> problems) {
        return problems.stream().map(Problem::text).toList();
    }

    private static List<String> read(byte[] bytes) {
        return Assertions.assertTimeoutPreemptively(BOUND, () -> texts(faults(EngineFile.read("f.yaml", bytes))));
    }

    private static List<String> read(String text) {
        return read(text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void empty() {
        assertThat(read(new byte[0])).containsExactly("f.yaml: the file is empty; start it with 'format: 1'");
        assertThat(read("\n# nothing here\n"))
                .containsExactly("f.yaml: the file holds nothing; start it with 'format: 1'");
    }

    @Test
    void wideEncodings() {
        byte[] utf16 = "\uFEFFformat: 1\n".getBytes(StandardCharsets.UTF_16LE);
        assertThat(read(utf16)).containsExactly("f.yaml:1:1: the file is saved as UTF-16; save it as UTF-8");
        assertThat(read("format: 1\n".getBytes(StandardCharsets.UTF_16)))
                .containsExactly("f.yaml:1:1: the file is saved as UTF-16; save it as UTF-8");
        assertThat(read(new byte[] {(byte) 0xFF, (byte) 0xFE, 0, 0, 'f', 0, 0, 0}))
                .containsExactly("f.yaml:1:1: the file is saved as UTF-32; save it as UTF-8");
        assertThat(read("format: 1\n".getBytes(StandardCharsets.UTF_16LE)).getFirst())
                .startsWith("f.yaml:1:2: a zero byte: this is a binary file, or text saved as UTF-16");
    }

    @Test
    void oldEightBitText() {
        assertThat(read("format: 1\n# 90 \u00B0\n".getBytes(StandardCharsets.ISO_8859_1))
                        .getFirst())
                .startsWith("f.yaml:2:6: byte 0xB0 is not UTF-8 text; save the file as UTF-8");
    }

    @Test
    void binary() {
        byte[] picture = {(byte) 'G', 'I', 'F', '8', '9', 'a', 1, 0, 1, 0, 0};
        assertThat(read(picture).getFirst())
                .startsWith("f.yaml:1:7: the control character U+0001 does not belong in text");
        byte[] zeros = new byte[4096];
        assertThat(read(zeros).getFirst()).startsWith("f.yaml:1:1: a zero byte: this is a binary file");
    }

    @Test
    void fiftyMegabytes(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("large.yaml");
        byte[] line = "x: 1234567890\n".repeat(75_000).getBytes(StandardCharsets.UTF_8);
        try (var out = Files.newOutputStream(file)) {
            for (int i = 0; i < 50; i++) {
                out.write(line);
            }
        }
        assertThat(Files.size(file)).isGreaterThan(50_000_000);
        List<Problem> problems = Assertions.assertTimeoutPreemptively(BOUND, () -> faults(EngineFile.read(file)));
        assertThat(texts(problems)).hasSize(1).first().asString().contains("more than the 4194304 bytes that are read");
    }

    @Test
    void aFileFullOfFaultsIsBounded() {
        StringBuilder text = new StringBuilder("format: 1\n");
        for (int i = 0; i < 20_000; i++) {
            text.append("k").append(i).append(": [a, {b: c}]\n");
        }
        List<String> problems = read(text.toString());
        assertThat(problems).hasSize(Problems.MOST + 1);
        assertThat(problems.getLast()).matches("f.yaml: remark: \\d+ more problems are not listed");
    }

    @Test
    void aFileFullOfValuesIsBounded() {
        String text = "x: [" + "a, ".repeat(1_300_000) + "b]";
        assertThat(read(text))
                .containsExactly(
                        "f.yaml:1:1199993: more keys and values than are read; an engine file has some ten thousand. Maybe it is another file?");
    }

    @Test
    void copiesOfALargeThingAreBounded() {
        String many = "a, ".repeat(100_000);
        String text =
                "format: 1\nengine: { id: x, name: X, base: a }\nzones: { top: {} }\nparts:\n  a-#: { each: 100, also: ["
                        + many + "b] }\njoints: {}\n";
        assertThat(read(text)).anyMatch(line -> line.startsWith("f.yaml:5:16: the copies of this file are too many"));
    }

    @Test
    void deepNestingOfTwoMillionLevels() {
        assertThat(read("[".repeat(2_000_000)))
                .containsExactly(
                        "f.yaml:1:51: nested more than 50 levels deep; an engine file needs about eight levels");
        assertThat(read("{a: ".repeat(500_000)).getFirst()).contains("nested more than 50 levels deep");
    }

    @Test
    void missingFileAndFolder(@TempDir Path folder) {
        Path missing = folder.resolve("missing.yaml");
        assertThat(texts(faults(EngineFile.read(missing))))
                .containsExactly(missing + ": there is no such file; name an engine file, or the id of a shipped one");
        assertThat(texts(faults(EngineFile.read(folder))))
                .containsExactly(folder + ": this is a folder; name an engine file");
    }

    @Test
    void aSoundFileCutOffAnywhereNeverThrows() throws IOException {
        byte[] whole = Files.readAllBytes(Path.of("../engines/wren-160.yaml"));
        List<Integer> unexpected = new ArrayList<>();
        for (int length = 1; length < whole.length; length += 997) {
            Reading reading = EngineFile.read("cut.yaml", java.util.Arrays.copyOf(whole, length));
            if (length < whole.length / 2 && reading instanceof Reading.Sound) {
                unexpected.add(length);
            }
        }
        assertThat(unexpected).isEmpty();
    }

    @Test
    void aSoundFileWithOneCharacterChangedNeverThrows() throws IOException {
        byte[] whole = Files.readAllBytes(Path.of("../engines/wren-160.yaml"));
        long seed = 160;
        java.util.Random random = new java.util.Random(seed);
        for (int i = 0; i < 60; i++) {
            byte[] changed = whole.clone();
            changed[random.nextInt(changed.length)] = (byte) random.nextInt(256);
            Reading reading = EngineFile.read("changed.yaml", changed);
            if (reading instanceof Reading.Faulty faulty) {
                assertThat(faulty.problems()).as("seed %d, change %d", seed, i).isNotEmpty();
            }
        }
    }
}
