package gudgeon.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** As found and trouble, as a person fills them in. The order of the ladder: common practice, the destructive rungs last. */
class FoundAndTroubleTest extends ServedTest {
    @Test
    void aMiscountIsKeptUnlessItIsSaidToBeWrong() throws Exception {
        String job = visitor.open("Counted", "wren-160", "piston");
        visitor.strip(job, 4);
        String page = job + "/found?joint=cowl-screws";
        Visitor.Page first = visitor.fill(
                page,
                "/found",
                "count",
                "3",
                "bag",
                "1",
                "differs",
                "one stud <b>",
                "thread-1",
                "M6x1",
                "length-1",
                "26,5",
                "where-1",
                "front left");
        assertThat(first.text()).contains("Written down as found: Cowl screws").contains("26.5 mm long, front left");
        assertThat(first.body()).contains("one stud &lt;b&gt;").doesNotContain("stud <b>");
        assertThat(visitor.fill(page, "/found", "count", "4", "bag", "1").text())
                .contains("3, then 4");
        assertThat(visitor.fill(page, "/found", "count", "5", "bag", "1", "instead", "yes")
                        .text())
                .contains("3, then 5")
                .doesNotContain("then 4");
    }

    @Test
    void whatIsRefusedStaysAsTyped() throws Exception {
        String job = visitor.open("Refused", "wren-160", "piston");
        Visitor.Page page = visitor.fill(
                job + "/found?joint=cowl-screws",
                "/found",
                "count",
                "three",
                "bag",
                "12",
                "differs",
                "all odd",
                "length-2",
                "long");
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.body())
                .contains("value=\"three\"")
                .contains("value=\"12\"")
                .contains("all odd</textarea>")
                .contains("value=\"long\"")
                .contains("The count is a whole number from 0 to 999.")
                .contains("The length in mm is a number from 0 to 2000.");
        assertThat(visitor.get(job + "/found?joint=nothing").text()).contains("Which joint?");
    }

    @Test
    void theLadderIsClimbedFromTheGentlestAndCautionsComeFirst() throws Exception {
        String job = visitor.open("Seized", "wren-160", "piston");
        Visitor.Page none = visitor.fill(job + "/trouble?joint=cowl-screws", "/trouble", "note", "rust");
        assertThat(none.status()).isEqualTo(422);
        assertThat(none.body()).contains("rust</textarea>").contains("Choose what is the matter");
        Visitor.Page ladder =
                visitor.fill(job + "/trouble?joint=cowl-screws", "/trouble", "kind", "SEIZED", "f-2", "yes");
        assertThat(ladder.text()).contains("Number 2");
        assertThat(ladder.text().indexOf("Petrol vapour"))
                .isBetween(0, ladder.text().indexOf("Warm the part around it"));
        assertThat(ladder.text().indexOf("Drill it out"))
                .isGreaterThan(ladder.text().indexOf("Soak the thread"));
        String path = job + "/trouble/ladder?joint=cowl-screws";
        Visitor.Page second = visitor.fill(path, "/tried", "outcome", "NO", "minutes", "5");
        assertThat(second.text()).contains("did not help, 5 min");
        assertThat(second.body())
                .doesNotContain("name=\"rung\" value=\"clean\"")
                .contains("name=\"rung\" value=\"soak\"");
        Visitor.Page drilled = visitor.fill(path, "/tried", "rung", "drill", "outcome", "DRILLED", "minutes", "70");
        assertThat(drilled.text()).contains("Drilled out.").contains("To buy, because of trouble screw M6x1 x 16 mm");
        assertThat(visitor.get(job + "/trouble").text()).doesNotContain("Not solved yet");
    }

    @Test
    void sentTwiceItIsWrittenOnceAndTwoTroublesStayApart() throws Exception {
        String job = visitor.open("Twice", "wren-160", "piston");
        Map<String, String> fields = Visitor.form(visitor.get(job + "/trouble?joint=cowl-screws"), "/trouble");
        fields.put("kind", "ROUNDED");
        visitor.post(job + "/trouble", fields);
        visitor.post(job + "/trouble", fields);
        Visitor.Page list = visitor.get(job + "/trouble");
        assertThat(list.text().split("Rounded: cowl screws", -1)).hasSize(2);
        assertThat(visitor.fill(
                                job + "/trouble/ladder?joint=cowl-screws",
                                "/tried",
                                "outcome",
                                "OUT",
                                "minutes",
                                "many")
                        .status())
                .isEqualTo(422);
    }
}
