package gudgeon.app.web.strip;

import gudgeon.app.desk.StripQuestion;
import gudgeon.app.document.TargetWords;
import gudgeon.app.document.WhileOpenWords;
import gudgeon.core.engine.Engine;
import gudgeon.core.planning.OtherWays;
import gudgeon.core.planning.StripRequest;
import gudgeon.core.planning.WhileOpen;
import java.util.List;
import java.util.Optional;

/** What pays while that is open, and what the plan would cost another way. */
public final class WhileOpenView {
    private static final int TOP = 8;

    private final Engine engine;
    private final Asked asked;
    private final boolean waiting;
    private final Optional<WhileOpen> open;
    private final Optional<OtherWays> others;
    private final WhileOpenWords words;

    /** @param waiting whether it is being worked out */
    WhileOpenView(Engine engine, Asked asked, boolean waiting, Optional<WhileOpen> open, Optional<OtherWays> others) {
        this.engine = engine;
        this.asked = asked;
        this.waiting = waiting;
        this.open = open;
        this.others = others;
        this.words = new WhileOpenWords(engine);
    }

    /**
     * A row with where the plan is that takes it along.
     *
     * @param add the address; empty when there is nothing to add
     */
    public record Line(WhileOpenWords.Row row, String add) {}

    public boolean waiting() {
        return waiting;
    }

    public boolean known() {
        return open.isPresent();
    }

    /** What is open, in words. */
    public String goal() {
        StripQuestion.Goal goal = asked.goal();
        return TargetWords.of(engine, new StripRequest.Target(goal.reach(), goal.aside(), goal.open(), goal.measure()));
    }

    public String strip() {
        return asked.href();
    }

    public String again() {
        return asked.href().replaceFirst("/strip", "/strip/while-open");
    }

    /** The rows with the greatest savings. */
    public List<Line> top() {
        List<Line> all = worthwhile();
        return all.subList(0, Math.min(TOP, all.size()));
    }

    /** The rows after those. */
    public List<Line> more() {
        List<Line> all = worthwhile();
        return all.subList(Math.min(TOP, all.size()), all.size());
    }

    private List<Line> worthwhile() {
        return open.stream()
                .flatMap(one -> words.worthwhile(one).stream())
                .map(row -> new Line(row, with(row.ids())))
                .toList();
    }

    private String with(List<String> parts) {
        List<String> reach = asked.goal().reach();
        for (String part : parts) {
            reach = reach.contains(part) ? reach : Asked.plus(reach, part);
        }
        return asked.withGoal(new StripQuestion.Goal(
                        reach,
                        asked.goal().aside(),
                        asked.goal().open(),
                        asked.goal().measure()))
                .href();
    }

    public List<Line> off() {
        return open.stream()
                .flatMap(one -> words.off(one).stream())
                .map(row -> new Line(row, ""))
                .toList();
    }

    public List<WhileOpenWords.Row> blocked() {
        return open.stream().flatMap(one -> words.blocked(one).stream()).toList();
    }

    public List<String> otherWays() {
        return others.map(words::otherWays).orElse(List.of());
    }
}
