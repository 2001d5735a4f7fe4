package gudgeon.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.app.photo.Snapshot;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A job lived through on the command line, every command once. */
class JobCliTest {
    @TempDir
    private Path folder = Path.of("");

    private Typed run(String... words) {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--store", folder.resolve("books.sqlite").toString()));
        return Typed.run(all.toArray(String[]::new));
    }

    private String done(String... words) {
        Typed typed = run(words);
        assertThat(typed.exit()).as("%s: %s", List.of(words), typed.err()).isEqualTo(Exit.DONE);
        assertThat(typed.err()).isEmpty();
        return typed.out();
    }

    private String refused(String... words) {
        Typed typed = run(words);
        assertThat(typed.exit()).as("%s: %s", List.of(words), typed.out()).isEqualTo(Exit.INPUT);
        assertThat(typed.out()).isEmpty();
        return typed.err();
    }

    private void papersAndTools() throws IOException {
        for (String question : List.of("plan", "build", "order", "places")) {
            Path pdf = folder.resolve(question + ".pdf");
            Typed written = run("job", question, "--pdf", pdf.toString());
            assertThat(written.exit()).as(written.err()).isEqualTo(Exit.DONE);
            assertThat(written.err()).contains("written: ");
            assertThat(Files.readAllBytes(pdf)).startsWith('%', 'P', 'D', 'F').hasSizeGreaterThan(5_000);
        }
        assertThat(done("job", "book", "--csv", "-"))
                .startsWith("number,at,by,what,counts,id\r\n")
                .contains("gasket blown at the left stud")
                .contains(",no,");
        done("trouble", "cowl-screws", "snapped", "--fastener", "1");
        assertThat(done("job", "order", "--csv", "-")).contains("exhaust gasket", "Because of trouble,1,piece,");
        done("undo");
        assertThat(run("job", "ledger", "--pdf", "x.pdf").err()).contains("--pdf is for plan, build, order, places");
        assertThat(run("job", "plan", "--csv", "x.csv").exit()).isEqualTo(Exit.USAGE);

        assertThat(done("tool", "ladder", "--borrowed-from", "Ann")).contains("borrowed from Ann");
        assertThat(run("tool", "ladder").err()).contains("--owned", "--missing");
        String tool = done("job", "tools").lines().findFirst().orElseThrow().strip();
        assertThat(done("tool", tool, "--missing")).contains("missing");
        assertThat(done("job", "tools")).contains("not there: " + tool);
        assertThat(done("job", "tools", "--json")).contains("\"missing\"");
        assertThat(done("came", "head gasket", "--size", "60 x 70", "--compared")).contains("Compared: head gasket");
        assertThat(refused("came", "head gasket", "--holes", "some")).contains("holes");
    }

    @Test
    void fromTheFirstWordToTheLedger() throws IOException {
        assertThat(refused("next")).contains("no job yet", "gudgeon job new");
        assertThat(done("job", "list")).contains("no job yet");
        assertThat(done("job", "new", "wren-160", "--as", "Old mower", "--reach", "silencer", "--name", "Barn"))
                .contains("Job barn", "coming apart", "Next");
        assertThat(refused("job", "new", "wren-16", "--reach", "head")).contains("wren-160");
        assertThat(refused("job", "new", "wren-160", "--reach", "hed")).contains("hed");
        assertThat(done("next", "--job", "ba")).contains("Next");
        assertThat(refused("next", "--job", "shed")).contains("barn");
        assertThat(done("trouble", "exhaust-nuts", "seized", "--fastener", "1")).contains("gentlest first", "soak");
        assertThat(done("rescue", "exhaust-nuts", "soak", "--fastener", "1", "--minutes", "3"))
                .contains("did not help");
        assertThat(done("wont", "exhaust-nuts")).contains("changes the plan", "buy");
        assertThat(done("undo")).contains("Withdrawn");
        assertThat(done("rescue", "exhaust-nuts", "drill", "--fastener", "1", "--outcome", "drilled"))
                .contains("drilled out");
        assertThat(refused("trouble", "exhaust-nuts", "seized", "--fastener", "9"))
                .contains("exhaust-nuts/1");
        assertThat(done("done", "exhaust-nuts", "--count", "2", "--bag", "1", "--minutes", "9"))
                .contains("bag 1");
        assertThat(refused("done", "exhaust-nuts")).contains("done already");
        assertThat(done("found", "exhaust-nuts", "--count", "1", "--instead", "--piece", "1,M8x1.25,40,top"))
                .contains("M8x1.25 40 mm top");
        assertThat(done("bag", "1", "--to", "left drawer")).contains("left drawer");
        assertThat(done("add", "--joint", "Stay bolt", "--between", "silencer, crankcase", "--fasteners", "1 x M6x16"))
                .contains("changes the plan", "new");
        assertThat(refused("add", "--joint", "Stay", "--between", "silencer", "--fasteners", "1 x M6x16"))
                .contains("two parts");
        assertThat(done("note", "gasket blown at the left stud", "--about", "silencer"))
                .contains("gasket blown");
        Path photo = folder.resolve("p.png");
        Files.write(photo, Snapshot.fromAPhone(60, 40, 6));
        assertThat(done("photo", photo.toString(), "--caption", "left")).contains("Photo: left");
        assertThat(done("photo", photo.toString(), "--about", "head")).contains("Photo (");
        Files.writeString(photo, "no picture");
        assertThat(refused("photo", photo.toString())).contains("no picture");
        assertThat(done("tell")).contains("rag in: where, count");
        assertThat(done("tell", "rag in", "where=exhaust port", "count=1")).contains("1 rag in");
        assertThat(refused("tell", "rag inn", "where=x")).contains("rag in");
        assertThat(refused("tell", "rag in", "count=two")).contains("no number");
        assertThat(done("off", "exhaust-shield", "--to", "shelf")).contains("exhaust shield");
        assertThat(done("job", "show")).contains("Barn");
        assertThat(done("job", "places")).contains("left drawer", "shelf");
        assertThat(done("job", "plan")).contains("silencer to crankcase half");
        assertThat(done("job", "order")).isNotEmpty();
        papersAndTools();
        assertThat(done("job", "build")).contains("exhaust-nuts/snug");
        assertThat(refused("together", "exhaust-nuts/9")).contains("not known");
        assertThat(done("job", "book")).contains("struck through", "Job begun");
        assertThat(done("job", "engine")).contains("stay-bolt", "Old mower");
        Typed ledger = run("job", "ledger");
        assertThat(ledger.exit()).isEqualTo(Exit.BLOCKED);
        assertThat(ledger.out()).contains("rags in", "fasteners out");
        assertThat(run("job", "close").exit()).isEqualTo(Exit.BLOCKED);
        for (String question : List.of("show", "plan", "build", "order", "places", "book", "list")) {
            assertThat(run("job", question, "--json").out())
                    .as(question)
                    .startsWith(question.equals("book") || question.equals("list") ? "[" : "{");
        }
        assertThat(done("note", "as JSON", "--json")).startsWith("{").contains("\"entries\"", "\"kind\" : \"note\"");
    }

    @Test
    void aSessionAndAfterAPause() {
        assertThat(done("job", "new", "wren-160", "--reach", "piston", "--name", "Barn"))
                .contains("Barn");
        assertThat(done("tell", "place set", "latitude=52.449", "longitude=-1.251", "outdoors=yes"))
                .contains("52.4° north");
        assertThat(done("today", "90", "--keep", "17", "--past-dark"))
                .contains("Stop work by", "Lay out first", "Stop here, and close up", "Until it is together again");
        String json = done("today", "90", "--keep", "17", "--past-dark", "--json");
        assertThat(json)
                .startsWith("{")
                .contains("\"stops\"", "\"independent\"", "\"together\"", "\"median\" : 1.8", "\"sunset\"");
        assertThat(refused("today", "90", "--first", "pistn", "--past-dark")).contains("Maybe piston");
        assertThat(run("today", "2").exit()).isEqualTo(Exit.USAGE);
        assertThat(run("today", "90", "--at-hand", "helper").err()).contains("helper=14:30-16:00");
        assertThat(done("prepare")).contains("Wash the engine");
        assertThat(done("prepare", "--json")).contains("\"special\"");
        assertThat(done("done", "cowl-screws", "--minutes", "6")).isNotEmpty();
        assertThat(done("back")).contains("Begin with", "Look at these again");
        assertThat(done("back", "--json")).contains("\"look_again\"", "\"begin\"");
    }
}
