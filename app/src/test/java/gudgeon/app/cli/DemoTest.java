package gudgeon.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.app.desk.Job;
import gudgeon.app.desk.Workshop;
import gudgeon.app.web.WebServer;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo, whole: what README.md promises is printed and lies in the folder. */
class DemoTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void printsThePlanAndWritesEveryPaper() throws IOException {
        Path papers = folder.resolve("papers");
        Typed typed = Typed.run("demo", "--no-serve", "--to", papers.toString());
        assertThat(typed.exit()).isEqualTo(Exit.DONE);
        assertThat(typed.out())
                .startsWith("Dunlin 22D: cylinder head off")
                .contains("proved: no cheaper set", "10 bolts, cylinder head to block", "To buy", "Papers, in ")
                .contains("strip-card.pdf", "build-sheet.pdf", "order-list.pdf", "order-list.csv", "engine.svg");
        assertThat(starts(papers.resolve("strip-card.pdf"))).startsWith("%PDF-");
        assertThat(starts(papers.resolve("build-sheet.pdf"))).startsWith("%PDF-");
        assertThat(starts(papers.resolve("order-list.pdf"))).startsWith("%PDF-");
        assertThat(Files.readString(papers.resolve("order-list.csv"))).contains("head bolt M11x1.5 x 148 mm");
        assertThat(Files.readString(papers.resolve("engine.svg"))).contains("<svg", "</svg>");
        assertThat(Files.readString(papers.resolve("engine-a3-1-of-3.svg"))).contains("420mm", "1 of 3", "</svg>");
    }

    @Test
    void theBookOfTheJobHoldsAStripHalfDoneAndIsToldOnce() {
        Path books = folder.resolve("books.sqlite");
        String papers = folder.resolve("papers").toString();
        assertThat(Typed.run("demo", "--no-serve", "--to", papers, "--store", books.toString()).exit())
                .isEqualTo(Exit.DONE);
        assertThat(Typed.run("demo", "--no-serve", "--to", papers, "--store", books.toString()).exit())
                .isEqualTo(Exit.DONE);
        try (Workshop workshop = Workshop.open(books)) {
            assertThat(workshop.jobIds()).hasSize(1);
            Job job = workshop.findJob(workshop.jobIds().getFirst()).orElseThrow();
            assertThat(job.stage()).isEqualTo(Job.Stage.STRIPPING);
            assertThat(job.facts().contradictions()).isEmpty();
            assertThat(job.facts().kept().bags()).hasSizeGreaterThan(15);
            assertThat(job.facts().findings().troubles()).isNotEmpty();
            assertThat(job.findNext()).isPresent();
        }
    }

    @Test
    void theAddressThatIsPrintedLeadsToThePageThatIsMeant() throws Exception {
        try (WebServer server = WebServer.start(0, folder.resolve("books.sqlite"))) {
            for (String page : List.of("", "/new-job", "new-job")) {
                URI address = URI.create(Serving.address(server, page));
                assertThat(address.getPath()).isEqualTo(page.isEmpty() ? "/" : "/new-job");
                assertThat(HttpClient.newHttpClient()
                                .send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.discarding())
                                .statusCode())
                        .isEqualTo(200);
            }
        }
    }

    @Test
    void aFolderThatIsAFileIsToldAndLeftAlone() throws IOException {
        Path file = folder.resolve("papers");
        Files.writeString(file, "mine");
        Typed typed = Typed.run("demo", "--no-serve", "--to", file.toString());
        assertThat(typed.exit()).isEqualTo(Exit.FAILED);
        assertThat(typed.err()).contains(file.toString());
        assertThat(Files.readString(file)).isEqualTo("mine");
    }

    private static String starts(Path file) throws IOException {
        assertThat(file).isNotEmptyFile();
        return new String(Files.readAllBytes(file), 0, 8, StandardCharsets.ISO_8859_1);
    }
}
