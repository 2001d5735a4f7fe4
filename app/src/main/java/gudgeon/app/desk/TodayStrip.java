package gudgeon.app.desk;

import gudgeon.core.book.RescueLadder;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.UndoTime;
import gudgeon.core.engine.Zone;
import gudgeon.core.forecast.Nominal;
import gudgeon.core.forecast.Paces;
import gudgeon.core.planning.StripPlan;
import gudgeon.core.planning.StripRequest;
import gudgeon.core.planning.StripWalk;
import gudgeon.core.session.CloseUp;
import gudgeon.core.session.Doable;
import gudgeon.core.session.SessionPlan;
import gudgeon.core.session.SessionPlanner;
import gudgeon.core.session.SessionRequest;
import gudgeon.core.session.Stand;
import gudgeon.core.session.Step;
import gudgeon.core.session.StripStands;
import gudgeon.core.session.Window;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Today's card while the engine comes apart. */
final class TodayStrip {
    /** A joint this likely to be seized is soaked the day before (typical, common practice). */
    static final double WORTH_A_SOAK = 0.15;

    /** At most this share of a session is spent on soaking for later ones. */
    private static final double SOAKING_SHARE = 1.0 / 6;

    /** Until an engine that was warm for a step is cold enough for the next. Typical, common practice. */
    static final double COOLING_MINUTES = 120;

    private static final RescueLadder.Rung SOAK = RescueLadder.find("soak").orElseThrow();

    private final Job job;
    private final TodayQuestion question;
    private final Optional<Today.Light> light;
    private final OffsetDateTime now;
    private final StripPlan plan;
    private final StripWalk start;
    private final Paces paces;

    TodayStrip(Job job, TodayQuestion question, List<String> first, Optional<Today.Light> light, OffsetDateTime now) {
        this.job = job;
        this.question = question;
        this.light = light;
        this.now = now;
        this.plan = first.isEmpty() ? job.findPlan().orElseThrow() : withFirst(first);
        this.start = StripWalk.along(job.engine(), job.request(), plan);
        this.paces = OwnPace.of(job);
    }

    /** A plan that reaches some parts first and goes on from there. */
    private StripPlan withFirst(List<String> parts) {
        StripRequest all = job.request();
        StripRequest only = new StripRequest(
                StripRequest.Target.off(parts.toArray(String[]::new)),
                all.undone(),
                all.done(),
                all.willNotCome(),
                all.means(),
                all.underway());
        if (!(job.strip(only) instanceof StripQuestion.Reply.Planned first)) {
            return job.findPlan().orElseThrow();
        }
        List<StripPlan.Operation> operations = new ArrayList<>(first.plan().operations());
        StripRequest then = after(all, operations);
        if (job.strip(then) instanceof StripQuestion.Reply.Planned rest) {
            operations.addAll(rest.plan().operations());
        }
        StripPlan whole = first.plan();
        return new StripPlan(operations, whole.opening(), whole.order(), whole.lifts(), whole.destroyed());
    }

    private StripRequest after(StripRequest request, List<StripPlan.Operation> operations) {
        List<String> undone = new ArrayList<>(request.undone());
        List<String> done = new ArrayList<>(request.done());
        List<String> away = new ArrayList<>(
                request.underway().map(StripRequest.Underway::away).orElse(List.of()));
        for (StripPlan.Operation operation : operations) {
            if (operation.kind() == StripPlan.Kind.LIFT) {
                away.addAll(operation.pieces());
            } else if (job.engine().findJoint(operation.id()).isPresent()) {
                undone.add(operation.id());
            } else {
                done.add(operation.id());
            }
        }
        return new StripRequest(
                request.target(),
                undone,
                done,
                request.willNotCome(),
                request.means(),
                Optional.of(new StripRequest.Underway(away)));
    }

    Today plan() {
        Doable doable = Doable.of(
                start, plan.operations(), operation -> reason(operation).isPresent());
        List<StripPlan.Operation> operations =
                doable.steps().stream().map(Doable.Turn::operation).toList();
        List<Stand> stands = new StripStands(job.engine(), CoveredJoints.of(job)).along(start, operations);
        List<Today.Work> works = works(doable);
        List<Step> steps = new ArrayList<>();
        for (int k = 0; k < works.size(); k++) {
            steps.add(new Step(works.get(k).id(), works.get(k).nominal(), needs(operations.get(k)), stands.get(k + 1)));
        }
        SessionRequest request = request(stands.getFirst(), steps);
        SessionPlan session = SessionPlanner.plan(request);
        List<Today.Work> soaks = soaks(operations.subList(session.steps(), operations.size()), stands.getFirst());
        if (!soaks.isEmpty()) {
            List<Step> more = Stream.concat(
                            soaks.stream()
                                    .map(soak -> new Step(soak.id(), soak.nominal(), List.of(), stands.getFirst())),
                            steps.stream())
                    .toList();
            request = request(stands.getFirst(), more);
            session = SessionPlanner.plan(request);
            works = Stream.concat(soaks.stream(), works.stream()).toList();
        }
        return new Today(job, question, now, light, request, session, works, left(doable));
    }

    private SessionRequest request(Stand first, List<Step> steps) {
        CloseUp closeUp =
                question.keep().isPresent() ? CloseUp.keeping(question.keep().getAsDouble()) : CloseUp.USUAL;
        return new SessionRequest(
                Math.max(1, question.timeThereIs(light, now)),
                question.chance(),
                closeUp,
                first,
                steps,
                question.windows(),
                paces);
    }

    private List<Today.Work> works(Doable doable) {
        List<Today.Work> works = new ArrayList<>();
        boolean warm = false;
        for (Doable.Turn turn : doable.steps()) {
            Joint.EngineState state = state(turn.operation());
            double cooling = warm && state == Joint.EngineState.COLD ? COOLING_MINUTES : 0;
            warm = state == Joint.EngineState.WARM || (warm && cooling == 0);
            works.add(new Today.Work.Undo(
                    turn.operation(), nominal(job, turn.operation(), turn.changeoverSeconds(), cooling)));
        }
        return works;
    }

    private Joint.EngineState state(StripPlan.Operation operation) {
        return job.engine()
                .findJoint(operation.id())
                .map(joint -> joint.freedom().engineState())
                .or(() -> job.engine()
                        .findReady(operation.id())
                        .map(ready -> ready.effect().engineState()))
                .orElse(Joint.EngineState.ANY);
    }

    /** What the file says a step takes; the expected seizure apart. */
    static Nominal nominal(Job job, StripPlan.Operation operation, long changeoverSeconds, double waitMinutes) {
        Optional<UndoTime> undo = operation.kind() == StripPlan.Kind.UNDO
                ? job.engine()
                        .findJoint(operation.id())
                        .map(joint -> joint.work().undo())
                : Optional.empty();
        long seconds = undo.map(UndoTime::fastenerSeconds).orElse(operation.seconds());
        return new Nominal(
                operation.kind().name(),
                (seconds + changeoverSeconds) / 60.0,
                waitMinutes,
                undo.map(UndoTime::seizureChance).orElse(0.0),
                undo.map(time -> time.seizureSeconds() / 60.0).orElse(0.0));
    }

    /** What must be at hand only for a while. */
    private List<String> needs(StripPlan.Operation operation) {
        return question.windows().stream()
                .map(Window::need)
                .filter(need -> operation.place().tools().contains(need)
                        || way(operation).equals(need))
                .toList();
    }

    private static String way(StripPlan.Operation operation) {
        return operation.lift() == null ? "" : operation.lift().way();
    }

    private Optional<Today.LeftOut> reason(StripPlan.Operation operation) {
        List<String> tools = operation.place().tools().stream()
                .filter(question.without()::contains)
                .toList();
        if (!tools.isEmpty()) {
            return Optional.of(new Today.LeftOut(operation.id(), Today.LeftOut.Why.TOOL, tools));
        }
        if (question.without().contains(way(operation))) {
            return Optional.of(new Today.LeftOut(operation.id(), Today.LeftOut.Why.LIFTING, List.of(way(operation))));
        }
        boolean trouble = job.facts().findings().troubles().stream()
                .anyMatch(one -> !one.solved() && one.trouble().joint().equals(operation.id()));
        return trouble
                ? Optional.of(new Today.LeftOut(operation.id(), Today.LeftOut.Why.TROUBLE, List.of(operation.id())))
                : Optional.empty();
    }

    private List<Today.LeftOut> left(Doable doable) {
        return doable.left().stream()
                .map(operation -> reason(operation)
                        .orElseGet(() -> new Today.LeftOut(operation.id(), Today.LeftOut.Why.WAITS, List.of())))
                .toList();
    }

    /** Joints of later days that are in reach now and likely to be seized: the likeliest first. */
    private List<Today.Work> soaks(List<StripPlan.Operation> later, Stand stand) {
        if (!stand.isSafe()) {
            return List.of();
        }
        double most = question.timeThereIs(light, now) * SOAKING_SHARE;
        List<StripPlan.Operation> worth = later.stream()
                .filter(operation -> operation.kind() == StripPlan.Kind.UNDO
                        && chance(operation) >= WORTH_A_SOAK
                        && !Soaked.lately(job, operation.id(), now)
                        && start.isInReach(operation))
                .sorted((a, b) -> Double.compare(chance(b), chance(a)))
                .toList();
        List<Today.Work> soaks = new ArrayList<>();
        Set<String> zones = new HashSet<>(Set.of(job.engine().workplace().startZone()));
        double spent = 0;
        for (StripPlan.Operation operation : worth) {
            String zone = operation.place().zone();
            double minutes = SOAK.minutes() + (zones.contains(zone) ? 0 : thereAndBack(zone));
            if (paces.all().median() * (spent + minutes) <= most) {
                spent += minutes;
                zones.add(zone);
                soaks.add(new Today.Work.Soak(
                        operation.id(),
                        zone,
                        chance(operation),
                        SOAK.waitMinutes() / 60.0,
                        Nominal.work("SOAK", minutes)));
            }
        }
        return soaks;
    }

    private double thereAndBack(String zone) {
        Zone there = job.engine().zone(zone);
        return (there.goSeconds() + there.backSeconds()) / 60.0;
    }

    private double chance(StripPlan.Operation operation) {
        return job.engine()
                .findJoint(operation.id())
                .map(joint -> joint.work().undo().seizureChance())
                .orElse(0.0);
    }
}
