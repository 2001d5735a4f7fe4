package gudgeon.core.planning;

import gudgeon.core.engine.Check;
import gudgeon.core.engine.Condition;
import gudgeon.core.engine.Literal;
import gudgeon.core.planning.BuildPlan.HoldUp;
import gudgeon.core.planning.BuildPlan.Kind;
import gudgeon.core.planning.BuildPlan.Needs;
import gudgeon.core.planning.BuildPlan.Operation;
import gudgeon.core.planning.BuildReplay.Rule;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A fault that is planted in a way back, the rule that must notice it, and how it is planted. */
enum PlantedFault {
    OPEN_TIME_EXCEEDED(Rule.OPEN_TIME, PlantedFault::openTooLong),
    CURE_CUT_SHORT(Rule.CURE, (way, i, step) -> noWait(way, i, step, Kind.FILL)),
    CHECK_TOO_SOON(Rule.CHECK, (way, i, step) -> noWait(way, i, step, Kind.CHECK)),
    STAGE_BEFORE_ANOTHER(Rule.STAGES, PlantedFault::stagesSwapped),
    FASTENER_ORDER(Rule.FASTENERS, PlantedFault::fastenersReversed),
    ANGLE_TWICE(Rule.FASTENERS, PlantedFault::angleTwice),
    CHECK_BEFORE_ITS_WINDOW(Rule.CHECK, PlantedFault::checkEarly),
    CHECK_AFTER_ITS_WINDOW(Rule.CHECK, (way, i, step) -> checkLate(way, i, step, false)),
    GATE_SKIPPED(Rule.GATE, (way, i, step) -> checkLate(way, i, step, true)),
    PIECE_LEFT_OVER(Rule.PARTS_LEFT_OVER, (way, i, step) -> removed(way, i, step, Kind.PLACE)),
    JOINT_LEFT_OPEN(Rule.JOINT_LEFT_OPEN, (way, i, step) -> removed(way, i, step, Kind.SNUG)),
    STAGE_LEFT_OUT(Rule.STAGES, (way, i, step) -> removed(way, i, step, Kind.STAGE)),
    SEALANT_LEFT_OUT(Rule.SEALANT, (way, i, step) -> removed(way, i, step, Kind.SEAL)),
    SOMETHING_LEFT_IN(Rule.LEFT_IN, (way, i, step) -> removed(way, i, step, Kind.RESTORE)),
    CIRCUIT_NOT_FILLED(Rule.FILL, (way, i, step) -> removed(way, i, step, Kind.FILL)),
    TIGHTENED_BEFORE_PLACED(Rule.MEETS, PlantedFault::joinedTooEarly),
    ACCESS_BLOCKED(Rule.ROOM, PlantedFault::accessBlocked),
    FILLED_BEFORE_TIGHT(Rule.FILL, PlantedFault::filledEarly),
    TAKEN_BACK_EARLY(Rule.TAKEN_BACK_EARLY, PlantedFault::takenBackEarly),
    SOMETHING_ELSE_WHILE_LOOSE(Rule.LOOSE, PlantedFault::looseMeanwhile),
    ELECTRIC_NOT_LAST(Rule.ELECTRIC_LAST, PlantedFault::electricEarly),
    NEW_PIECE_FORGOTTEN(Rule.INPUT, PlantedFault::inputsForgotten),
    THREAD_STATE_PASSED_OVER(Rule.THREAD_STATE, PlantedFault::threadStatePassedOver),
    PLACED_AT_THE_WRONG_TIME(Rule.LIFT, PlantedFault::liftedThroughAnother);

    final Rule rule;
    final Plant plant;

    PlantedFault(Rule rule, Plant plant) {
        this.rule = rule;
        this.plant = plant;
    }

    /** Plants a fault at a step, or nothing when it does not fit there. */
    interface Plant {
        Optional<BuildPlan> at(WayBack way, int index, Operation step);
    }

    private static boolean clear(Operation step) {
        return step.holdUp().blockedBy().isEmpty();
    }

    private static Optional<BuildPlan> openTooLong(WayBack way, int i, Operation step) {
        int seal = way.find(step.subject().ref() + "/seal");
        if (step.kind() != Kind.SNUG || seal < 0 || !clear(step)) {
            return Optional.empty();
        }
        return way.joint(step)
                .makeup()
                .sealant()
                .filter(sealant -> sealant.openSeconds() > 0)
                .map(sealant ->
                        way.edit().waitBefore(i, sealant.openSeconds() + 1).plan());
    }

    private static Optional<BuildPlan> noWait(WayBack way, int i, Operation step, Kind next) {
        boolean fits = step.kind() == Kind.WAIT
                && way.steps().get(i + 1).kind() == next
                && way.steps().get(i + 1).id().equals(step.subject().ref());
        if (!fits) {
            return Optional.empty();
        }
        boolean byCure = way.steps().stream()
                .flatMap(from -> from.order().lags().stream()
                        .filter(lag -> lag.to().equals(step.subject().ref())))
                .allMatch(lag -> next == Kind.FILL || lag.minSeconds() == 900);
        return byCure ? Optional.of(way.edit().remove(i).plan()) : Optional.empty();
    }

    private static Optional<BuildPlan> stagesSwapped(WayBack way, int i, Operation step) {
        if (step.tightening() == null || step.tightening().stage() < 2) {
            return Optional.empty();
        }
        int before = way.find(step.subject().ref() + "/" + (step.tightening().stage() - 1));
        return Optional.of(way.edit().move(i, before).plan());
    }

    private static Optional<BuildPlan> fastenersReversed(WayBack way, int i, Operation step) {
        if (step.tightening() == null || step.tightening().fasteners().size() < 2) {
            return Optional.empty();
        }
        List<String> other = new ArrayList<>(step.tightening().fasteners());
        Collections.reverse(other);
        return Optional.of(way.edit().fasteners(i, other).plan());
    }

    private static Optional<BuildPlan> angleTwice(WayBack way, int i, Operation step) {
        if (step.kind() != Kind.ANGLE
                || step.tightening() == null
                || step.tightening().fasteners().isEmpty()) {
            return Optional.empty();
        }
        List<String> twice = new ArrayList<>(step.tightening().fasteners());
        twice.add(twice.getFirst());
        return Optional.of(way.edit().fasteners(i, twice).plan());
    }

    private static Check check(WayBack way, Operation step) {
        return way.engine().rules().checks().stream()
                .filter(check -> check.id().equals(step.subject().ref()))
                .findFirst()
                .orElseThrow();
    }

    private static Optional<BuildPlan> checkEarly(WayBack way, int i, Operation step) {
        if (step.kind() != Kind.CHECK || step.holdUp().blockedBy().stream().anyMatch(PlantedFault::isOrder)) {
            return Optional.empty();
        }
        return check(way, step).after().stream()
                .map(mark -> mark.contains("/") ? way.find(mark) : way.last(mark))
                .filter(at -> at >= 0)
                .findFirst()
                .map(at -> way.edit().move(i, at).plan());
    }

    private static boolean isOrder(BuildPlan.Lack lack) {
        return lack.kind() == BuildPlan.LackKind.ORDER;
    }

    private static Optional<BuildPlan> checkLate(WayBack way, int i, Operation step, boolean gate) {
        if (step.kind() != Kind.CHECK || check(way, step).gate() != gate) {
            return Optional.empty();
        }
        return check(way, step).before().stream()
                .map(mark -> way.find(mark + "/snug"))
                .filter(at -> at > i && clear(way.steps().get(at)))
                .findFirst()
                .map(at -> way.edit().move(i, at).plan());
    }

    private static Optional<BuildPlan> removed(WayBack way, int i, Operation step, Kind kind) {
        return step.kind() == kind ? Optional.of(way.edit().remove(i).plan()) : Optional.empty();
    }

    private static Optional<BuildPlan> joinedTooEarly(WayBack way, int i, Operation step) {
        if (step.kind() != Kind.SNUG) {
            return Optional.empty();
        }
        for (int at = i - 1; at >= 0; at--) {
            Operation earlier = way.steps().get(at);
            if (earlier.kind() == Kind.PLACE
                    && step.order().after().contains(earlier.id())
                    && earlier.subject().parts().stream()
                            .anyMatch(step.subject().parts()::contains)) {
                return Optional.of(way.edit().move(i, at).plan());
            }
        }
        return Optional.empty();
    }

    /** Places a part that the only alternative of an access clause wants out of the way, before the joint is tight. */
    private static Optional<BuildPlan> accessBlocked(WayBack way, int i, Operation step) {
        if (step.kind() != Kind.SNUG || way.find("crack-" + step.subject().ref()) >= 0) {
            return Optional.empty();
        }
        int last = way.last(step.subject().ref());
        if (!clear(way.steps().get(last)) || wasCracked(way, step) || onBench(way, step, i)) {
            return Optional.empty();
        }
        for (Condition.Clause clause : way.joint(step).freedom().access().clauses()) {
            List<Literal> literals = clause.alternatives().getFirst().literals();
            if (clause.alternatives().size() > 1 || !(literals.getFirst() instanceof Literal.PartAway away)) {
                continue;
            }
            for (int at = last + 1; at < way.steps().size(); at++) {
                Operation later = way.steps().get(at);
                if (later.kind() == Kind.PLACE && later.subject().parts().contains(away.id())) {
                    return Optional.of(way.edit().move(at, last).plan());
                }
            }
        }
        return Optional.empty();
    }

    private static boolean wasCracked(WayBack way, Operation step) {
        return way.request().steps().stream()
                .anyMatch(done -> done.id().equals("crack-" + step.subject().ref()));
    }

    private static boolean onBench(WayBack way, Operation step, int i) {
        return IntStream.range(i, way.steps().size())
                .mapToObj(way.steps()::get)
                .filter(later -> later.kind() == Kind.PLACE)
                .flatMap(later -> later.subject().parts().stream())
                .anyMatch(step.subject().parts()::contains);
    }

    private static Optional<BuildPlan> filledEarly(WayBack way, int i, Operation step) {
        if (step.kind() != Kind.FILL) {
            return Optional.empty();
        }
        return way.engine().joints().stream()
                .filter(joint -> joint.freedom().opens().contains(step.subject().ref()))
                .map(joint -> way.last(joint.id()))
                .filter(at -> at >= 0 && at < i)
                .findFirst()
                .map(at -> way.edit().move(i, at).plan());
    }

    private static Optional<BuildPlan> takenBackEarly(WayBack way, int i, Operation step) {
        if (step.kind() != Kind.RESTORE) {
            return Optional.empty();
        }
        return way.engine().joints().stream()
                .filter(joint -> joint.freedom().needs().contains(step.subject().ref()))
                .map(joint -> way.find(joint.id() + "/snug"))
                .filter(at -> at >= 0 && at < i && !wasCracked(way, way.steps().get(at)))
                .findFirst()
                .map(at -> way.edit().move(i, at).plan());
    }

    /** Puts a step that turns or looks at something else between a placing and the joint that holds it. */
    private static Optional<BuildPlan> looseMeanwhile(WayBack way, int i, Operation step) {
        boolean fits = step.kind() == Kind.PLACE
                && i + 1 < way.steps().size()
                && way.steps().get(i + 1).kind() == Kind.SNUG
                && clear(step)
                && isLoose(way, i);
        if (!fits) {
            return Optional.empty();
        }
        for (int at = i - 1; at >= 0; at--) {
            if (List.of(Kind.STAGE, Kind.CHECK, Kind.ANGLE)
                            .contains(way.steps().get(at).kind())
                    && clear(way.steps().get(at))) {
                return Optional.of(way.edit().move(at, i).plan());
            }
        }
        return Optional.empty();
    }

    private static boolean isLoose(WayBack way, int i) {
        BuildWorld world = new BuildWorld(way.engine());
        for (BuildRequest.Step step : way.request().steps()) {
            if (step.kind() == StripPlan.Kind.LIFT) {
                world.away.addAll(step.parts());
            } else if (way.engine().findJoint(step.id()).isPresent()) {
                world.open.add(step.id());
            } else {
                world.ready.add(step.id());
            }
        }
        List<String> atStart = List.copyOf(world.loose());
        for (Operation step : way.steps().subList(0, i + 1)) {
            world.open.remove(step.kind() == Kind.SNUG ? step.subject().ref() : "");
            world.ready.remove(step.kind() == Kind.RESTORE ? step.subject().ref() : "");
            if (step.kind() == Kind.PLACE) {
                world.away.removeAll(step.subject().parts());
            }
        }
        return !atStart.containsAll(world.loose());
    }

    private static Optional<BuildPlan> electricEarly(WayBack way, int i, Operation step) {
        if (!step.id().equals("battery-off/back")) {
            return Optional.empty();
        }
        for (int at = i - 1; at >= 0; at--) {
            if (way.steps().get(at).kind() != Kind.WAIT) {
                return Optional.of(way.edit().move(i, at).plan());
            }
        }
        return Optional.empty();
    }

    private static Optional<BuildPlan> inputsForgotten(WayBack way, int i, Operation step) {
        if (step.kind() == Kind.FILL || step.needs().inputs().isEmpty()) {
            return Optional.empty();
        }
        Needs without =
                new Needs(List.of(), step.needs().cautions(), step.needs().text());
        return Optional.of(way.edit().needs(i, without).plan());
    }

    private static Optional<BuildPlan> threadStatePassedOver(WayBack way, int i, Operation step) {
        boolean blocked =
                step.holdUp().blockedBy().stream().anyMatch(lack -> lack.kind() == BuildPlan.LackKind.THREAD_STATE);
        return blocked
                ? Optional.of(way.edit()
                        .holdUp(i, new HoldUp(List.of(), step.holdUp().waitsFor()))
                        .plan())
                : Optional.empty();
    }

    /** Places first what a lift condition wants away when another set comes back. */
    private static Optional<BuildPlan> liftedThroughAnother(WayBack way, int i, Operation step) {
        if (step.kind() != Kind.PLACE) {
            return Optional.empty();
        }
        for (String part : step.subject().parts()) {
            for (Condition.Clause clause : way.engine().part(part).lift().clauses()) {
                if (clause.alternatives().size() > 1
                        || !(clause.alternatives().getFirst().literals().getFirst() instanceof Literal.PartAway away)
                        || step.subject().parts().contains(away.id())) {
                    continue;
                }
                for (int at = i + 1; at < way.steps().size(); at++) {
                    Operation later = way.steps().get(at);
                    if (later.kind() == Kind.PLACE && later.subject().parts().contains(away.id())) {
                        return Optional.of(way.edit().move(at, i).plan());
                    }
                }
            }
        }
        return Optional.empty();
    }
}
