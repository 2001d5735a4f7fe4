package gudgeon.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.app.desk.Deed;
import gudgeon.app.desk.Finch;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.OpenJob;
import gudgeon.app.desk.PartsOff;
import gudgeon.app.desk.Say;
import gudgeon.app.desk.StepDone;
import gudgeon.app.desk.StripQuestion;
import gudgeon.app.desk.Who;
import gudgeon.app.desk.Workshop;
import gudgeon.core.book.Ref;
import gudgeon.core.book.Setup;
import gudgeon.core.book.Word;
import gudgeon.core.planning.StripPlan;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The build bench with a torque and an angle stage, each interrupted, and the ledgers at the end. The rules of interruption:
 * common practice for torque-to-yield bolts, an angle is never turned twice.
 */
class WayBackTest {
    @TempDir
    private Path folder = Path.of("");

    /** A job that is stripped, in the store that the server will open. */
    private String stripped() {
        try (Workshop workshop = Workshop.open(folder.resolve("books.sqlite"))) {
            OpenJob open = new OpenJob(
                    "Finch",
                    new OpenJob.Start.Text(Finch.ENGINE),
                    new StripQuestion.Goal(List.of("head"), List.of(), List.of(), List.of()),
                    new Setup.Settings(List.of(), 0, "", ""));
            OpenJob.Reply reply = open.open(workshop, Who.SOMEBODY, Optional.empty());
            assertThat(reply).isInstanceOf(OpenJob.Reply.Opened.class);
            Job job = ((OpenJob.Reply.Opened) reply).job();
            while (job.findNext().isPresent()) {
                StripPlan.Operation next = job.findNext().orElseThrow();
                Workshop.Noted noted = workshop.note(
                        job,
                        next.kind() == StripPlan.Kind.LIFT
                                ? new PartsOff(next.pieces(), "bench", false, "scribed")
                                : StepDone.of(next.id()),
                        Who.SOMEBODY,
                        Optional.empty());
                job = ((Workshop.Noted.Done) noted).job();
            }
            return "/jobs/" + job.id();
        }
    }

    /** Before the first part is back in place too. */
    @Test
    void aNoteAndAnUndoComeBackToTheBenchTheyCameFrom() throws Exception {
        String job = stripped();
        try (WebServer server = WebServer.start(0, folder.resolve("books.sqlite"))) {
            Visitor visitor = new Visitor(server.address());
            String bench = job + "/build/bench";
            String noting = link(visitor.get(bench), "/note");
            Visitor.Page noted = visitor.fill(noting, "/note", "text", "the dowel is stiff");
            assertThat(noted.path()).startsWith(bench + "?said=");
            assertThat(noted.text()).contains("Noted.").contains("the dowel is stiff");
            Visitor.Page back = visitor.fill(link(visitor.get(bench), "/undo"), "/undo");
            assertThat(back.path()).startsWith(bench + "?said=");
            assertThat(back.text()).contains("Taken back").doesNotContain("the dowel is stiff");
            assertThat(visitor.fill(job + "/note?back=https%3A%2F%2Felsewhere.example%2F", "/note", "text", "x").path())
                    .as("never to anywhere else")
                    .startsWith(job + "/bench");
        }
    }

    private static String link(Visitor.Page page, String holds) {
        Matcher link = Pattern.compile("href=\"([^\"]*" + holds + "[^\"]*)\"").matcher(page.body());
        assertThat(link.find()).isTrue();
        return link.group(1).replace("&amp;", "&");
    }

    @Test
    void torqueStartsAtTheFirstAngleIsTurnedOnceAndTheTrayIsEmptyAtTheEnd() throws Exception {
        String job = stripped();
        try (WebServer server = WebServer.start(0, folder.resolve("books.sqlite"))) {
            Visitor visitor = new Visitor(server.address());
            String bench = job + "/build/bench";
            assertThat(visitor.get(job + "/closing").text())
                    .contains("Not yet")
                    .contains("Head bolts: 4 fasteners out");
            visitor.fill(bench, "/build/done");
            assertThat(visitor.get(job + "/bench").status())
                    .as("the strip bench leads to the build bench")
                    .isEqualTo(303);
            assertThat(visitor.get(job + "/strip").text())
                    .as("nothing that was just put back is to be undone")
                    .contains("It goes together again")
                    .doesNotContain("Steps to go");
            visitor.fill(bench, "/build/done");
            assertThat(visitor.get(bench).text()).contains("Stage 1 of 2: 30 N·m, every bolt, 1 to 4");
            visitor.fill(bench, "/build/turned");
            assertThat(visitor.fill(bench, "/build/turned").text()).contains("Number 1 and 2 have it. Now number 3.");
            assertThat(visitor.get(job + "/tags").text()).contains("Half tightened");
            Visitor.Page torque = visitor.fill(job + "/build/broken", "/build/broken");
            assertThat(torque.text())
                    .contains("The stage starts at number 1")
                    .contains("Back nothing off")
                    .contains("All 4 have it");
            assertThat(visitor.fill(bench, "/build/done").text())
                    .contains("Stage 2 of 2: 90° further")
                    .contains("Paint a mark");

            visitor.fill(bench, "/build/turned");
            Visitor.Page which = visitor.get(job + "/build/broken");
            assertThat(visitor.fill(job + "/build/broken", "/build/broken").status())
                    .as("certain or not must be said")
                    .isEqualTo(422);
            assertThat(which.text()).doesNotContain("again");
            Visitor.Page angle = visitor.fill(job + "/build/broken", "/build/broken", "certain", "yes", "f-3", "yes");
            assertThat(angle.text())
                    .contains("Turn only those without a mark: 3 and 4")
                    .doesNotContain("again");
            assertThat(crosses(angle))
                    .as("done ones are crossed as well as filled")
                    .isEqualTo(2);
            Visitor.Page spent = visitor.fill(job + "/build/broken", "/build/broken", "certain", "no");
            assertThat(spent.text()).contains("All are spent").doesNotContain("again");
            assertThat(spent.body()).doesNotContain("/build/turned");
            assertThat(visitor.fill(bench, "/build/renewed").text()).contains("All out and renewed");
            finish(visitor, bench);
            assertThat(visitor.get(job + "/build").text()).contains("Every step of the way back is done");
            Visitor.Page closing = visitor.get(job + "/closing");
            assertThat(closing.text()).contains("Everything balances").contains("4 out, 4 in");
            assertThat(visitor.fill(job + "/closing", "/closing", "note", "tray empty")
                            .text())
                    .contains("Closed up and signed for");
        }
    }

    /** Something else happens to the job meanwhile. */
    private void meanwhile(String job, Deed deed) {
        try (Workshop workshop = Workshop.open(folder.resolve("books.sqlite"))) {
            Job there = workshop.findJob(job.substring("/jobs/".length())).orElseThrow();
            assertThat(workshop.note(there, deed, Who.SOMEBODY, Optional.empty()))
                    .isInstanceOf(Workshop.Noted.Done.class);
        }
    }

    @Test
    void aStageLeftWithoutAWordAndNotesOfTheStripAreTold() throws Exception {
        String job = stripped();
        meanwhile(job, new Say(new Word.Note("arrow to the belt"), List.of(Ref.part("head"))));
        meanwhile(job, new Say(new Word.Note("left rear one is stiff"), List.of(Ref.joint("head-bolts"))));
        try (WebServer server = WebServer.start(0, folder.resolve("books.sqlite"))) {
            Visitor visitor = new Visitor(server.address());
            String bench = job + "/build/bench";
            assertThat(visitor.get(job + "/build").text()).contains("arrow to the belt", "left rear one is stiff");
            assertThat(visitor.get(bench).text()).contains("How it was", "arrow to the belt");
            visitor.fill(bench, "/build/done");
            assertThat(visitor.get(bench).text()).contains("left rear one is stiff");
            visitor.fill(bench, "/build/done");
            visitor.fill(bench, "/build/turned");
            Visitor.Page old = visitor.get(bench);
            assertThat(old.text()).contains("Number 1 has it. Now number 2");
            meanwhile(job, Say.that(new Setup.SessionStarted("sunday")));
            Map<String, String> form = Visitor.form(old, "/build/turned");
            Visitor.Page late = visitor.post(job + "/build/turned", form);
            assertThat(late.status()).as("a page from before the leaving").isEqualTo(422);
            assertThat(late.text()).contains("it starts at number 1");
            assertThat(visitor.get(bench).text())
                    .contains("It was left midway")
                    .contains("starts at number 1")
                    .contains("Back nothing off")
                    .contains("All 4 have it");
            visitor.fill(bench, "/build/done");

            assertThat(visitor.fill(bench, "/build/turned").text()).contains("Number 1 has it");
            meanwhile(job, Say.that(new Setup.SessionEnded("sunday", true, "")));
            Visitor.Page asked = visitor.get(bench);
            assertThat(asked.text()).contains("Look at the marks first", "Whose mark has moved?");
            assertThat(asked.body()).doesNotContain("/build/turned").doesNotContain("data-hold");
            assertThat(asked.body()).as("the one with an entry is not asked for").doesNotContain("name=\"f-1\"");
            assertThat(visitor.fill(bench, "/build/broken", "certain", "yes", "f-3", "yes").text())
                    .contains("Turn only those without a mark: 3 and 4");
        }
    }

    private static int crosses(Visitor.Page page) {
        return page.body().split("class=\"hole done\"><circle[^>]*/><path", -1).length - 1;
    }

    private static void finish(Visitor visitor, String bench) throws Exception {
        for (int i = 0; i < 12; i++) {
            Visitor.Page page = visitor.get(bench);
            if (!page.body().contains("/build/done\"")) {
                return;
            }
            Map<String, String> fields = Visitor.form(page, "/build/done");
            visitor.post(bench.replace("/bench", "/done"), fields);
        }
    }

    @Test
    void aRagThatWentInMustComeOut() throws Exception {
        String job = stripped();
        try (WebServer server = WebServer.start(0, folder.resolve("books.sqlite"))) {
            Visitor visitor = new Visitor(server.address());
            String ledger = "/closing/entry";
            assertThat(visitor.fill(job + "/closing", ledger, "what", "rag-in", "where", "Bore 1", "rags", "2")
                            .text())
                    .contains("Bore 1: 2 in, 0 out");
            assertThat(visitor.fill(job + "/closing", ledger, "what", "rag-out", "where", "Bore 1", "rags", "lots")
                            .status())
                    .isEqualTo(422);
            assertThat(visitor.fill(job + "/closing", ledger, "what", "rag-out", "where", "Bore 1", "rags", "2")
                            .text())
                    .contains("Bore 1 : 2 in, 2 out")
                    .doesNotContain("Rags still in");
        }
    }
}
