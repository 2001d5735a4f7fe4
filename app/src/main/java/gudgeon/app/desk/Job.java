package gudgeon.app.desk;

import gudgeon.app.format.EngineText;
import gudgeon.app.format.Problem;
import gudgeon.app.format.Reading;
import gudgeon.core.book.Facts;
import gudgeon.core.book.JobState;
import gudgeon.core.book.Setup;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.planning.Blocked;
import gudgeon.core.planning.StripPlan;
import gudgeon.core.planning.StripRequest;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * A job as it stood at one place of its book: a function of the entries up to there. Plans are worked out when first asked
 * for.
 */
public final class Job {
    /**
     * States that the order search may expand when a plan is asked for at the bench: about a second. The gap that is left is
     * in the plan.
     */
    public static final long BENCH_STATES = StripQuestion.STATES_PER_SECOND;

    private final String id;
    private final JobState state;
    private final Plans plans;
    private final Clock clock;
    private volatile @Nullable OwnEngine engine;

    Job(String id, JobState state, Plans plans, Clock clock) {
        this.id = id;
        this.state = state;
        this.plans = plans;
        this.clock = clock;
    }

    /**
     * The engine of the job.
     *
     * @param engine the file as corrected
     * @param text the file as corrected
     * @param remarks warnings and remarks of the check
     * @param setAside corrections that do not fit, or would give the file a fault; they are shown and have no effect
     */
    public record OwnEngine(Engine engine, String text, List<Problem> remarks, List<Setup.Patch> setAside) {
        public OwnEngine {
            remarks = List.copyOf(remarks);
            setAside = List.copyOf(setAside);
        }
    }

    /** Where a job is. */
    public enum Stage {
        /** Nothing is to be reached yet. */
        NO_TARGET,
        /** There is no plan for the target. */
        STUCK,
        STRIPPING,
        /** What was to be reached is reached. */
        STRIPPED,
        BUILDING,
        /** Every step of the way back is done. */
        TOGETHER
    }

    public String id() {
        return id;
    }

    public JobState state() {
        return state;
    }

    public Facts facts() {
        return state.facts();
    }

    /** What the owner calls it. */
    public String name() {
        String name = facts().setting().name();
        return name.isEmpty() ? id : name;
    }

    /** Now, by the clock of its workshop. */
    OffsetDateTime now() {
        return OffsetDateTime.now(clock);
    }

    Plans plans() {
        return plans;
    }

    /** The engine, corrections included. */
    public Engine engine() {
        return ownEngine().engine();
    }

    /** The engine with its text and what is to be said about it. */
    public OwnEngine ownEngine() {
        OwnEngine known = engine;
        if (known == null) {
            known = read();
            engine = known;
        }
        return known;
    }

    private OwnEngine read() {
        Facts.Basis basis = facts().setting().basis();
        EngineText.Corrected all = EngineText.correct(basis.text(), basis.patches());
        if (plans.reading(id, all.text()) instanceof Reading.Sound sound) {
            return new OwnEngine(sound.engine(), all.text(), sound.remarks(), all.refused());
        }
        List<Setup.Patch> kept = new ArrayList<>();
        List<Setup.Patch> setAside = new ArrayList<>();
        for (Setup.Patch patch : basis.patches()) {
            kept.add(patch);
            EngineText.Corrected some = EngineText.correct(basis.text(), kept);
            if (!some.refused().isEmpty() || plans.reading(id, some.text()) instanceof Reading.Faulty) {
                kept.removeLast();
                setAside.add(patch);
            }
        }
        String text = EngineText.correct(basis.text(), kept).text();
        return switch (plans.reading(id, text)) {
            case Reading.Sound sound -> new OwnEngine(sound.engine(), text, sound.remarks(), setAside);
            case Reading.Faulty faulty ->
                throw new IllegalStateException("the job " + id + " holds an engine file that cannot be read: "
                        + faulty.problems().getFirst().text());
        };
    }

    /** What is asked of the planner: the target, from the present state. Names that the engine does not have are left out. */
    public StripRequest request() {
        Engine file = engine();
        Facts facts = facts();
        Setup.TargetSet target = facts.setting().target();
        List<String> undone = facts.stripped().open().stream()
                .filter(operation -> file.findJoint(operation).isPresent())
                .toList();
        List<String> done = facts.stripped().open().stream()
                .filter(operation -> file.findReady(operation).isPresent())
                .toList();
        List<String> away = facts.stripped().away().keySet().stream()
                .filter(part -> file.findPart(part).isPresent())
                .toList();
        List<String> willNotCome = facts.setting().willNotCome().stream()
                .filter(joint -> file.findJoint(joint).isPresent() && !undone.contains(joint))
                .toList();
        return new StripRequest(
                new StripRequest.Target(
                        known(target.off(), part -> file.findPart(part).isPresent()),
                        known(target.aside(), part -> file.findPart(part).isPresent()),
                        known(target.open(), joint -> file.findJoint(joint).isPresent()),
                        known(
                                target.measure(),
                                feature -> file.findFeature(feature).isPresent())),
                undone,
                done,
                willNotCome,
                new StripRequest.Means(ways(), facts.setting().means().worthPerHour(), BENCH_STATES),
                underway(away));
    }

    private Optional<StripRequest.Underway> underway(List<String> away) {
        return facts().stripped().acts().isEmpty() ? Optional.empty() : Optional.of(new StripRequest.Underway(away));
    }

    private static List<String> known(List<String> ids, java.util.function.Predicate<String> there) {
        return ids.stream().filter(there).toList();
    }

    /** Ways of lifting that the person has. */
    public List<LiftingWay> ways() {
        List<LiftingWay> all = engine().workplace().waysOfLifting();
        List<String> with = facts().setting().means().with();
        List<LiftingWay> some = all.stream()
                .filter(way -> way.name().equals(StripQuestion.ALONE) || with.contains(way.name()))
                .toList();
        return some.isEmpty() ? all.subList(0, 1) : some;
    }

    /** What is left to undo, from the present state; the answer to every change of fact. */
    public StripQuestion.Reply strip() {
        return strip(request());
    }

    /** What would be left to undo under another request. */
    public StripQuestion.Reply strip(StripRequest other) {
        return switch (plans.strip(engine(), other)) {
            case StripPlan plan -> new StripQuestion.Reply.Planned(engine(), other, plan);
            case Blocked blocked -> new StripQuestion.Reply.Stuck(engine(), other, blocked);
        };
    }

    /** Whether the engine is being put together again: from then on nothing is left to undo. */
    public boolean goingTogether() {
        return !facts().built().steps().isEmpty();
    }

    /** The plan of what is left to undo; empty when there is no target or no plan, or when building has begun. */
    public Optional<StripPlan> findPlan() {
        return goingTogether() || facts().setting().target().isEmpty() || !(strip() instanceof StripQuestion.Reply.Planned planned)
                ? Optional.empty()
                : Optional.of(planned.plan());
    }

    /** The next step of the strip; empty when nothing is left or there is no plan. */
    public Optional<StripPlan.Operation> findNext() {
        return findPlan().flatMap(plan -> plan.operations().stream().findFirst());
    }

    /** Where the job is. */
    public Stage stage() {
        if (goingTogether()) {
            return new BuildBench(this).findNext().isPresent() ? Stage.BUILDING : Stage.TOGETHER;
        }
        if (facts().setting().target().isEmpty()) {
            return Stage.NO_TARGET;
        }
        return switch (strip()) {
            case StripQuestion.Reply.Stuck stuck -> Stage.STUCK;
            case StripQuestion.Reply.Unknown unknown -> Stage.STUCK;
            case StripQuestion.Reply.Planned planned ->
                planned.plan().operations().isEmpty() ? Stage.STRIPPED : Stage.STRIPPING;
        };
    }

    /** The number for the next bag: one more than the highest written on one. */
    public int nextBag() {
        OptionalInt highest = facts().kept().bags().keySet().stream()
                .filter(bag -> bag.matches("[0-9]{1,6}"))
                .mapToInt(Integer::parseInt)
                .max();
        return highest.orElse(0) + 1;
    }

    /** How many fasteners a joint has by the file, or by the last count when one was made. */
    public int fasteners(String joint) {
        Facts.FoundJoint found = facts().findings().joints().get(joint);
        return found == null ? engine().joint(joint).makeup().fasteners().size() : found.count();
    }

    /** Steps done so far in strip and build. */
    public int stepsDone() {
        return IntStream.of(
                        facts().stripped().acts().size(),
                        facts().built().steps().size())
                .sum();
    }
}
