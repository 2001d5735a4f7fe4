package gudgeon.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Today's card, the prepare card, coming back, without scripts. Facts: the shipped Wren. */
class TodayPagesTest extends ServedTest {
    @Test
    void soManyMinutesGiveACardToASafeStop() throws Exception {
        String job = visitor.open("Ninety", "wren-160", "piston");
        assertThat(visitor.get(job).body()).contains("action=\"" + job + "/today\"");
        Visitor.Page card = visitor.get(job + "/today?minutes=90&keep=17");
        assertThat(card.status()).isEqualTo(200);
        assertThat(card.text())
                .contains("Stop work by", "Closed up by", "Lay out first", "Stop here, and close up", "Alone?");
        assertThat(visitor.worked(job + "/today?minutes=90&keep=17", "usual pace").text())
                .as("the bands come when they are worked out")
                .contains("usual pace");
        Visitor.Page shorter = visitor.get(job + "/today?minutes=30&keep=17");
        assertThat(steps(shorter)).isLessThan(steps(card));
        assertThat(visitor.get(job + "/today?minutes=two").status()).isEqualTo(422);
        assertThat(visitor.get(job + "/today?minutes=90&helper-from=25:00").text())
                .contains("Write the time as 14:30");
        Visitor.Page unknown = visitor.get(job + "/today?minutes=90&first=pistn");
        assertThat(unknown.status()).isEqualTo(422);
        assertThat(unknown.text()).contains("No part is called pistn", "Maybe piston?");
    }

    /** A danger named by its title stands in red, as where it is written out: petrol is open for three steps of the Wren. */
    @Test
    void aDangerStaysADangerWhereItsTitleStands() throws Exception {
        String job = visitor.open("Petrol", "wren-160", "piston");
        String card = visitor.get(job + "/today?minutes=120").body();
        assertThat(card)
                .contains("<p class=\"danger\"><b>Danger.</b> Petrol vapour creeps and lights far away, as at step ")
                .doesNotContain("<p class=\"caution\"><b>Caution.</b> Petrol vapour");
    }

    private static int steps(Visitor.Page page) {
        return page.body().split("<li class=\"step\"", -1).length - 1;
    }

    @Test
    void aToolThatIsNotHereLeavesItsStepsOut() throws Exception {
        String job = visitor.open("No tool", "wren-160", "piston");
        Visitor.Page card = visitor.get(job + "/today?minutes=120");
        Matcher tool = Pattern.compile("name=\"without\" value=\"([^\"]+)\"")
                .matcher(card.body());
        assertThat(tool.find()).isTrue();
        String name = tool.group(1).replace("&#34;", "\"").replace("&amp;", "&");
        Visitor.Page without = visitor.get(job + "/today?minutes=120&without="
                + java.net.URLEncoder.encode(name, java.nio.charset.StandardCharsets.UTF_8));
        assertThat(without.text()).contains("Not today", name + " is not here", "not here today");
    }

    @Test
    void thePlaceIsKeptToATenthAndTheSunIsTold() throws Exception {
        String job = visitor.open("Place", "wren-160", "piston");
        Visitor.Page card = visitor.fill(
                job + "/today", "/today/place", "latitude", "52.449", "longitude", "-1,251", "outdoors", "yes");
        assertThat(card.status()).isEqualTo(200);
        assertThat(card.text()).contains("The sun");
        assertThat(visitor.get(job + "/book").text()).contains("52.4° north, 1.3° west, outdoors");
        Visitor.Page wrong = visitor.fill(job + "/today", "/today/place", "latitude", "95", "longitude", "0");
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.text()).contains("The latitude is a number from -90 to 90");
    }

    @Test
    void whatToHaveReady() throws Exception {
        String job = visitor.open("Ready", "wren-160", "piston");
        Visitor.Page page = visitor.get(job + "/prepare?minutes=120");
        assertThat(page.text()).contains("Wash the engine", "Lay out", "Before anything");
    }

    @Test
    void comingBackShowsWhatIsOpenAndCoversIt() throws Exception {
        String job = visitor.open("Pause", "wren-160", "piston");
        visitor.strip(job, 26);
        Visitor.Page back = visitor.get(job + "/back");
        assertThat(back.text()).contains("The last step was written", "Look at these again", "Begin with this");
        assertThat(back.body()).contains("oiled now");
        assertThat(visitor.fill(job + "/back", "/back").text()).contains("Oiled.");
    }

    /** Several openings are covered by one press; none ticked is told. */
    @Test
    void openingsAreCoveredSeveralAtOnce() throws Exception {
        String job = visitor.open("Open ports", "wren-160", "piston");
        visitor.strip(job, 26);
        Map<String, String> fields = Visitor.lastForm(visitor.get(job + "/back"), "/back");
        assertThat(fields).containsEntry("what", "covered");
        Visitor.Page none = visitor.post(job + "/back", fields);
        assertThat(none.status()).isEqualTo(422);
        assertThat(none.text()).contains("Tick what it is about");
        Matcher box = Pattern.compile("<input type=\"checkbox\" name=\"about\" value=\"([^\"]+)\"").matcher(none.body());
        List<String> open = box.results().map(one -> one.group(1)).toList();
        assertThat(open).hasSizeGreaterThan(1);
        Visitor.Page all = visitor.postAll(job + "/back", fields, "about", open);
        assertThat(all.text())
                .contains("Covered: " + open.size() + " openings.")
                .contains("Nothing stands open uncovered");
    }

    @Test
    void withoutATargetThereIsNoCard() throws Exception {
        String job = visitor.open("Aimless", "wren-160", "");
        assertThat(visitor.get(job + "/today").text()).contains("Nothing is to be reached yet");
        assertThat(visitor.get(job + "/prepare").text()).contains("Nothing has to be prepared");
        assertThat(visitor.get(job + "/back").text()).contains("No step was written yet");
    }
}
