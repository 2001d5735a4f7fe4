package gudgeon.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Bags, order, book, toolbox, engine of a job: what a person fills in, and what comes of it. Facts: the shipped Wren. */
class RoomPagesTest extends ServedTest {
    @Test
    void aBagIsMovedCountedAndNeverMadeTwice() throws Exception {
        String job = visitor.open("Bags", "wren-160", "piston");
        visitor.strip(job, 10);
        String bag = job + "/bags/bag?bag=1";
        assertThat(visitor.fill(bag, "/bags/bag", "place", "left drawer").text())
                .contains("left drawer");
        assertThat(visitor.get(job + "/bags").text()).contains("left drawer");
        assertThat(visitor.fill(bag, "/bags/bag", "what", "counted", "count", "99")
                        .text())
                .contains("Does not agree");
        assertThat(visitor.fill(bag, "/bags/bag", "what", "counted", "count", "-1")
                        .status())
                .isEqualTo(422);
        assertThat(visitor.get(job + "/bags/bag?bag=none").status()).isEqualTo(404);
        Visitor.Page twice = visitor.fill(job + "/bags", "/bags/new", "bag", "1", "contents", "odd washers");
        assertThat(twice.status()).isEqualTo(422);
        assertThat(twice.body()).contains("There is a bag 1 already").contains("value=\"odd washers\"");
        assertThat(visitor.fill(job + "/bags", "/bags/new", "bag", "odd <i>", "contents", "washers")
                        .body())
                .contains("odd &lt;i&gt;");
    }

    @Test
    void whatMustKeepItsPlaceIsAskedForUntilItIsMarked() throws Exception {
        String job = visitor.open("Marks", "wren-160", "piston");
        visitor.strip(job, 14);
        assertThat(visitor.get(job + "/bags").text())
                .contains("Mark these before they move")
                .contains("not marked");
        assertThat(visitor.fill(job + "/bags", "/bags/marked", "how", "scribed").status())
                .as("none ticked")
                .isEqualTo(422);
        Visitor.Page marked = visitor.fill(job + "/bags", "/bags/marked", "how", "scribed", "p-rocker-gear", "yes");
        assertThat(marked.text()).contains("marked: scribed");
        assertThat(marked.body()).doesNotContain("name=\"p-rocker-gear\"");
    }

    @Test
    void whatIsOrderedIsNotHereUntilItCame() throws Exception {
        String job = visitor.open("Order", "wren-160", "piston");
        assertThat(visitor.get(job + "/order").text()).contains("head gasket");
        Visitor.Page ordered = visitor.fill(job + "/order", "/ordered", "spec", "head gasket", "count", "1");
        assertThat(ordered.text()).contains("ordered 1, not here yet");
        assertThat(visitor.get(job).text()).contains("Ordered, not here yet: head gasket");
        assertThat(visitor.fill(job + "/order", "/received", "spec", "head gasket", "count", "1", "compared", "yes")
                        .text())
                .contains("laid beside the old one")
                .contains("here: 1");
        Visitor.Page other = visitor.fill(
                job + "/order", "/received", "spec", "head gasket", "count", "1", "compared", "yes", "new-holes", "99");
        assertThat(other.text()).contains("Not like the old one").contains("new 99");
        assertThat(visitor.fill(job + "/order", "/received", "spec", "head gasket", "count", "1", "new-holes", "many")
                        .status())
                .isEqualTo(422);
        assertThat(visitor.fill(job + "/order", "/ordered", "spec", "head gasket", "count", "0")
                        .status())
                .isEqualTo(422);
    }

    @Test
    void whatIsTakenBackStaysStruckThrough() throws Exception {
        String job = visitor.open("Book", "wren-160", "piston");
        visitor.strip(job, 2);
        Visitor.Page book = visitor.get(job + "/book");
        String back = book.body().replaceAll("(?s).*class=\"back noprint\" href=\"([^\"]*)\".*", "$1");
        Visitor.Page after = visitor.fill(back, "/book/entry", "why", "wrong one");
        assertThat(after.body()).contains("<del>").contains("wrong one");
        assertThat(visitor.get(back).text()).contains("It is taken back already");
        assertThat(visitor.get(job + "/book/entry?id=x").status()).isEqualTo(404);
    }

    @Test
    void theToolboxFitsTheTimeAndThePrintedPagesStand() throws Exception {
        String job = visitor.open("Tools", "wren-160", "piston");
        assertThat(visitor.get(job + "/toolbox?minutes=600").text()).contains("socket or spanner 12 mm");
        Visitor.Page missing = visitor.fill(
                job + "/toolbox?minutes=600", "/toolbox/tool", "tool", "circlip pliers", "whose", "MISSING");
        assertThat(missing.text()).contains("Circlip pliers: not there", "Needed and not there");
        assertThat(visitor.fill(
                                job + "/toolbox?minutes=600",
                                "/toolbox/tool",
                                "tool",
                                "circlip pliers",
                                "whose",
                                "BORROWED",
                                "from",
                                "Ann")
                        .text())
                .contains("borrowed from Ann")
                .doesNotContain("Needed and not there");
        assertThat(visitor.fill(job + "/toolbox", "/toolbox/tool", "whose", "ANY").status())
                .isEqualTo(422);
        assertThat(visitor.get(job + "/toolbox?minutes=6").text()).doesNotContain("circlip pliers");
        assertThat(visitor.get(job + "/toolbox?minutes=x").status()).isEqualTo(422);
        assertThat(visitor.get(job + "/tags").text()).contains("Nothing has to hang on the key now");
        visitor.strip(job, 6);
        assertThat(visitor.get(job + "/tags").text()).contains("Fuel open").contains("No flame, no starter");
        assertThat(visitor.get(job + "/labels").text()).contains("Head studs");
    }

    @Test
    void threeFieldsAddAJointAndItIsInThePlan() throws Exception {
        String job = visitor.open("Own engine", "wren-160", "piston");
        String page = job + "/engine/add-joint";
        Visitor.Page wrong =
                visitor.fill(page, "/add-joint", "name", "Guard bolts", "between", "cowl, hed", "fasteners", "some");
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.body())
                .contains("Nothing here is called “hed”")
                .contains("cannot be read as fasteners")
                .contains("Guard bolts");
        Visitor.Page checked = visitor.fill(
                page,
                "/add-joint",
                "name",
                "Guard bolts",
                "between",
                "cowl, head",
                "fasteners",
                "2 x M6x16",
                "check",
                "yes");
        assertThat(checked.text()).contains("finds nothing wrong");
        assertThat(visitor.get(job + "/engine").text()).contains("it is as it came");
        Visitor.Page added = visitor.fill(
                page, "/add-joint", "name", "Guard bolts", "between", "cowl, head", "fasteners", "2 x M6x16");
        assertThat(added.text()).contains("Added: Guard bolts").contains("Guard bolts, new");
        assertThat(visitor.get(job + "/strip").text()).contains("Undo the 2 bolts");
        assertThat(visitor.fill(job + "/engine/joint?joint=tank-bolts", "/engine/joint", "fasteners", "4 x M6x20")
                        .text())
                .contains("Put right: tank-bolts");
        assertThat(visitor.get(job + "/engine/file").body()).contains("guard-bolts");
        assertThat(visitor.get(job + "/engine/joint?joint=none").status()).isEqualTo(404);
    }
}
