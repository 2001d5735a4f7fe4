package gudgeon.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/**
 * What can be done on the pages can be done on the command line, and the other way round: the table "Pages and command line" of
 * docs/book.md names every deed of both, and every gap with its reason.
 */
class ParityTest {
    private static final Pattern POST = Pattern.compile("routes\\.post\\(\\s*\"([^\"]+)\"");
    private static final Pattern QUOTED = Pattern.compile("`([^`]+)`");
    private static final String JOB = "/jobs/{job}/";

    /** A row of the table. @param reason why one side lacks it; empty when both have it */
    private record Row(String deed, List<String> pages, List<String> commands, String reason) {}

    private static Path root() {
        Path here = Path.of("").toAbsolutePath();
        return Files.exists(here.resolve("docs/book.md")) ? here : Objects.requireNonNull(here.getParent());
    }

    private static List<Row> table() throws IOException {
        String book = Files.readString(root().resolve("docs/book.md"));
        String part = book.substring(book.indexOf("## Pages and command line"));
        List<Row> rows = new ArrayList<>();
        for (String line : part.lines().filter(row -> row.startsWith("| ")).skip(1).toList()) {
            String[] cells = line.split("\\|", -1);
            assertThat(cells).as(line).hasSize(6);
            rows.add(new Row(cells[1].strip(), quoted(cells[2]), quoted(cells[3]), cells[4].strip()));
        }
        return rows;
    }

    private static List<String> quoted(String cell) {
        return QUOTED.matcher(cell).results().map(found -> found.group(1)).toList();
    }

    /** Every path that a form is sent to, as it stands in the sources of the pages. */
    private static Set<String> posts() throws IOException {
        Set<String> posts = new TreeSet<>();
        try (Stream<Path> files = Files.walk(root().resolve("app/src/main/java/gudgeon/app/web"))) {
            for (Path file : files.filter(path -> path.toString().endsWith(".java")).toList()) {
                POST.matcher(Files.readString(file)).results().forEach(found -> posts.add(found.group(1)
                        .replace(JOB, "")));
            }
        }
        return posts;
    }

    private static CommandLine commands() {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        return Main.commandLine(new Screen(nowhere, nowhere, 96, false, false));
    }

    /** Every command that can write into a book: those that know a job, without the questions. */
    private static Set<String> deeds() {
        Set<String> deeds = new TreeSet<>(Set.of("job new", "job close"));
        commands().getSubcommands().forEach((name, line) -> {
            boolean aboutAJob = line.getCommandSpec().findOption("--job") != null;
            if (aboutAJob && !Set.of("next", "today", "prepare", "back").contains(name)) {
                deeds.add(name);
            }
        });
        return deeds;
    }

    /** "tell rag in" is the command tell; "job new" stays. */
    private static String command(String typed) {
        String[] words = typed.split(" ");
        return words[0].equals("job") ? words[0] + " " + words[1] : words[0];
    }

    @Test
    void everyFormHasItsRow() throws IOException {
        Set<String> told = new TreeSet<>();
        table().forEach(row -> told.addAll(row.pages()));
        assertThat(told).isEqualTo(posts());
    }

    @Test
    void everyCommandThatWritesHasItsRow() throws IOException {
        Set<String> told = new TreeSet<>();
        table().forEach(row -> row.commands().forEach(typed -> told.add(command(typed))));
        assertThat(told).containsAll(deeds());
    }

    @Test
    void everyCommandOfTheTableCanBeTyped() throws IOException {
        CommandLine commands = commands();
        for (Row row : table()) {
            for (String typed : row.commands()) {
                CommandLine at = commands;
                for (String word : command(typed).split(" ")) {
                    assertThat(at.getSubcommands()).as(typed).containsKey(word);
                    at = Objects.requireNonNull(at.getSubcommands().get(word));
                }
                for (String word : typed.split(" ")) {
                    assertThat(!word.startsWith("--") || at.getCommandSpec().findOption(word) != null)
                            .as("%s has %s", typed, word)
                            .isTrue();
                }
                if (typed.startsWith("tell ")) {
                    assertThat(gudgeon.app.desk.Tell.kinds()).contains(typed.substring("tell ".length()));
                }
            }
        }
    }

    @Test
    void whatOnlyOneSideHasSaysWhy() throws IOException {
        for (Row row : table()) {
            boolean both = !row.pages().isEmpty() && !row.commands().isEmpty();
            assertThat(both || !row.reason().isEmpty())
                    .as("%s: a side lacks it, and no reason is given", row.deed())
                    .isTrue();
        }
    }
}
