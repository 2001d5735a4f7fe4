package gudgeon.app.web.strip;

import gudgeon.app.desk.StripQuestion;
import gudgeon.app.desk.StripQuestion.Reply;
import gudgeon.app.desk.UnknownName;
import gudgeon.app.document.BlockedWords;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.app.document.ProofWords;
import gudgeon.app.document.StepWords;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Part;
import gudgeon.core.planning.Blocked;
import gudgeon.core.planning.StripPlan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What the strip page of an engine shows. */
public final class StripView {
    private final Engine engine;
    private final Asked asked;
    private final Optional<Reply> reply;
    private final Optional<Reply> without;
    private final Names names;

    /**
     * @param reply the answer; empty while it is worked out, or when nothing was asked
     * @param without the answer with nothing stuck, to compare; empty when there is none
     */
    StripView(Engine engine, Asked asked, Optional<Reply> reply, Optional<Reply> without) {
        this.engine = engine;
        this.asked = asked;
        this.reply = reply;
        this.without = without;
        this.names = new Names(engine);
    }

    /** Something in the question that can be taken out of it again. */
    public record Chosen(String text, String undo) {}

    /** An entry of the part chooser. */
    public record Choice(String id, String name) {}

    /** Parts of one assembly. */
    public record Choices(String group, List<Choice> parts) {}

    /** A way of lifting. */
    public record Way(String name, String limit, boolean chosen) {}

    /** A hidden field that carries the question along. */
    public record Kept(String name, String value) {}

    public String path() {
        return "/engines/" + asked.engine() + "/strip";
    }

    /** Whether something is to be reached. */
    public boolean asked() {
        return !asked.goal().isEmpty();
    }

    /** Whether the answer is still being worked out. */
    public boolean waiting() {
        return asked() && reply.isEmpty();
    }

    public String again() {
        return asked.href();
    }

    public String drawing() {
        return asked.href().replaceFirst("/strip", "/strip/drawing");
    }

    public String whileOpen() {
        return asked.href().replaceFirst("/strip", "/strip/while-open");
    }

    public List<Chosen> goals() {
        List<Chosen> goals = new ArrayList<>();
        StripQuestion.Goal goal = asked.goal();
        goal.reach()
                .forEach(id -> goals.add(new Chosen(
                        names.part(id) + " off",
                        goal(Asked.without(goal.reach(), id), goal.aside(), goal.open(), goal.measure()))));
        goal.aside()
                .forEach(id -> goals.add(new Chosen(
                        names.part(id) + " aside",
                        goal(goal.reach(), Asked.without(goal.aside(), id), goal.open(), goal.measure()))));
        goal.open()
                .forEach(id -> goals.add(new Chosen(
                        names.any(id) + " open",
                        goal(goal.reach(), goal.aside(), Asked.without(goal.open(), id), goal.measure()))));
        goal.measure()
                .forEach(id -> goals.add(new Chosen(
                        names.any(id) + " measured",
                        goal(goal.reach(), goal.aside(), goal.open(), Asked.without(goal.measure(), id)))));
        return goals;
    }

    private String goal(List<String> reach, List<String> aside, List<String> open, List<String> measure) {
        return asked.withGoal(new StripQuestion.Goal(reach, aside, open, measure))
                .href();
    }

    public List<Chosen> stuck() {
        return asked.stuck().stream()
                .map(id -> new Chosen(
                        names.any(id),
                        asked.withStuck(Asked.without(asked.stuck(), id)).href()))
                .toList();
    }

    public List<Choices> choices() {
        return choices(engine);
    }

    /** The parts that can be reached, by assembly. */
    public static List<Choices> choices(Engine engine) {
        Map<String, List<Choice>> byGroup = new LinkedHashMap<>();
        List<String> all = engine.parts().stream().map(Part::name).toList();
        for (Part part : engine.parts()) {
            if (!part.id().equals(engine.workplace().base())) {
                byGroup.computeIfAbsent(Names.heading(part.group(), all), key -> new ArrayList<>())
                        .add(new Choice(part.id(), part.name()));
            }
        }
        List<Choices> choices = new ArrayList<>();
        byGroup.forEach((group, parts) -> choices.add(new Choices(group, parts)));
        return choices;
    }

    public List<Way> ways() {
        return engine.workplace().waysOfLifting().stream()
                .filter(way -> !way.name().equals(StripQuestion.ALONE))
                .map(way -> new Way(
                        way.name(),
                        Figures.mass(way.limitKilograms()),
                        asked.with().contains(way.name())))
                .toList();
    }

    /** The question as hidden fields; the ways of lifting are boxes of their own. */
    public List<Kept> kept() {
        List<Kept> kept = new ArrayList<>();
        for (String name : List.of("reach", "aside", "open", "measure", "stuck")) {
            asked.values().getOrDefault(name, List.of()).forEach(value -> kept.add(new Kept(name, value)));
        }
        return kept;
    }

    public List<String> unknown() {
        return reply.orElse(null) instanceof Reply.Unknown words
                ? words.names().stream().map(StripView::unknown).toList()
                : List.of();
    }

    private static String unknown(UnknownName name) {
        String near = name.near().isEmpty() ? "" : " Maybe " + String.join(", or ", name.told()) + "?";
        return "Nothing here is called " + name.word() + "." + near;
    }

    /** Why there is no plan; empty when there is one. */
    public List<String> blocked() {
        return reply.orElse(null) instanceof Reply.Stuck stuck
                ? new BlockedWords(engine).reasons(stuck.blocked())
                : List.of();
    }

    /** Ways of lifting that would make a plan, with their addresses. */
    public List<Chosen> helps() {
        if (!(reply.orElse(null) instanceof Reply.Stuck stuck)) {
            return List.of();
        }
        return stuck.blocked().reasons().stream()
                .filter(reason -> reason.kind() == Blocked.Kind.TOO_HEAVY)
                .flatMap(reason -> reason.unblockedBy().stream())
                .distinct()
                .map(way -> new Chosen(
                        "With a " + way,
                        asked.withWays(Asked.plus(asked.with(), way)).href()))
                .toList();
    }

    public boolean planned() {
        return plan() != null;
    }

    private @Nullable StripPlan plan() {
        return reply.orElse(null) instanceof Reply.Planned planned ? planned.plan() : null;
    }

    private StripPlan made() {
        StripPlan plan = plan();
        if (plan == null) {
            throw new IllegalStateException("there is no plan. Maybe ask planned() first?");
        }
        return plan;
    }

    public String time() {
        return Figures.time(made().totalSeconds());
    }

    public String changeover() {
        return Figures.time(made().order().changeoverSeconds());
    }

    public int steps() {
        return made().operations().size();
    }

    public int lifts() {
        return made().lifts().count();
    }

    /** "184.50" where prices are known; a dash otherwise. */
    public String money() {
        return made().opening().money().isPresent()
                ? Figures.money(made().opening().money().getAsDouble())
                : "–";
    }

    public List<String> renew() {
        return StepWords.spends(made().destroyed());
    }

    public List<String> tools() {
        LinkedHashSet<String> tools = new LinkedHashSet<>();
        made().operations().forEach(operation -> tools.addAll(operation.place().tools()));
        return List.copyOf(tools);
    }

    /** What is proved, and what is not. */
    public List<String> proof() {
        return List.of(ProofWords.opening(made().opening()), ProofWords.order(made().order()));
    }

    /** Where the order is searched longer; empty when it is proved or was searched long already. */
    public String longer() {
        boolean open = !made().order().proven() || !made().opening().proven();
        return open && asked.effort() < Asked.LONG
                ? asked.withEffort(Asked.LONG).href()
                : "";
    }

    /** What the stuck joints cost: "50 min more than if all came"; empty when it cannot be said. */
    public String dearer() {
        if (asked.stuck().isEmpty() || !(without.orElse(null) instanceof Reply.Planned easy)) {
            return "";
        }
        long more = made().totalSeconds() - easy.plan().totalSeconds();
        return more == 0
                ? "No longer than if everything came."
                : Figures.time(Math.abs(more)) + (more > 0 ? " longer" : " shorter")
                        + " than if everything came: it was "
                        + Figures.time(easy.plan().totalSeconds()) + ".";
    }

    public List<StepView.Run> runs() {
        return new StepViews(
                        engine,
                        made(),
                        id -> asked.withStuck(Asked.plus(asked.stuck(), id)).href())
                .runs();
    }
}
