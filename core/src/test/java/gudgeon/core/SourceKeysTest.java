package gudgeon.core;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every source that a comment names by key stands in docs/sources.md. */
class SourceKeysTest {
    private static final Pattern MENTION = Pattern.compile("Sources?: ((?:,? ?\\[[A-Za-z0-9.-]+])+)");
    private static final Pattern KEY = Pattern.compile("\\[([A-Za-z0-9.-]+)]");
    private static final Pattern DEFINED = Pattern.compile("^- \\[([A-Za-z0-9.-]+)] ", Pattern.MULTILINE);

    @Test
    void everyKeyResolves() throws IOException {
        Path root = root();
        Set<String> defined = keys(DEFINED, Files.readString(root.resolve("docs/sources.md")));
        List<String> unknown = new ArrayList<>();
        int mentions = 0;
        for (Path file : written(root)) {
            Matcher mention = MENTION.matcher(Files.readString(file));
            while (mention.find()) {
                for (String key : keys(KEY, mention.group(1))) {
                    mentions++;
                    if (!defined.contains(key)) {
                        unknown.add(root.relativize(file) + " names [" + key + "]");
                    }
                }
            }
        }
        assertThat(mentions).as("mentions found at all").isPositive();
        assertThat(unknown).isEmpty();
    }

    @Test
    void seesSeveralKeysInOneMention() {
        Matcher mention = MENTION.matcher("text. Sources: [A1], [B-2]. More");
        assertThat(mention.find()).isTrue();
        assertThat(keys(KEY, mention.group(1))).containsExactly("A1", "B-2");
    }

    private static Set<String> keys(Pattern pattern, String text) {
        Set<String> keys = new LinkedHashSet<>();
        Matcher matcher = pattern.matcher(text);
        while (matcher.find()) {
            keys.add(matcher.group(1));
        }
        return keys;
    }

    private static List<Path> written(Path root) {
        return Stream.of("core/src", "app/src", "bench/src", "engines", "schema")
                .map(root::resolve)
                .filter(Files::isDirectory)
                .flatMap(SourceKeysTest::filesBelow)
                .filter(file -> file.toString().matches(".*\\.(java|yaml|json|csv|txt|md)"))
                .filter(file -> !file.endsWith("SourceKeysTest.java"))
                .toList();
    }

    private static Stream<Path> filesBelow(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).sorted().toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path root() {
        Path at = Path.of("").toAbsolutePath();
        while (!Files.exists(at.resolve("mvnj"))) {
            at = at.getParent();
        }
        return at;
    }
}
