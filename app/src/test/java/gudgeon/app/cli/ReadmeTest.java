package gudgeon.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** What README.md tells a newcomer to type can be typed. */
class ReadmeTest {
    private static final Pattern EXAMPLE = Pattern.compile("^    \\./gudgeon (.*?)(?: {2,}.*)?$", Pattern.MULTILINE);
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    @Test
    void everyCommandOfTheReadmeParses() throws IOException {
        String readme = Files.readString(root().resolve("README.md"));
        List<String> examples =
                EXAMPLE.matcher(readme).results().map(result -> result.group(1)).toList();
        assertThat(examples).hasSizeGreaterThan(5).anyMatch(line -> line.startsWith("demo"));
        CommandLine commands = Main.commandLine(new Screen(
                new java.io.PrintWriter(java.io.Writer.nullWriter()),
                new java.io.PrintWriter(java.io.Writer.nullWriter()),
                96,
                false,
                false));
        assertThat(examples).allSatisfy(line -> commands.parseArgs(words(line)));
    }

    @Test
    void theContinuousTestRunsTheReadmesTestCommand() throws IOException {
        String command = "./mvnj -B verify";
        assertThat(Files.readString(root().resolve("README.md"))).contains("    " + command + " ");
        assertThat(Files.readString(root().resolve(".ci/run"))).contains("exec " + command + "\n");
    }

    private static String[] words(String line) {
        Matcher matcher = WORD.matcher(line.strip());
        return matcher.results()
                .map(result -> result.group(1) != null ? result.group(1) : result.group(2))
                .toArray(String[]::new);
    }

    private static Path root() {
        Path here = Path.of("").toAbsolutePath();
        return Stream.iterate(here, Objects::nonNull, Path::getParent)
                .filter(folder -> Files.exists(folder.resolve("mvnj")))
                .findFirst()
                .orElseThrow();
    }
}
