package gudgeon.core.planning;

import gudgeon.core.engine.Condition;
import gudgeon.core.engine.Fastener;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.engine.Makeup;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.ReadyKind;
import gudgeon.core.planning.BuildEvidence.Undone;
import gudgeon.core.planning.BuildPlan.Kind;
import gudgeon.core.planning.BuildPlan.LackKind;
import gudgeon.core.planning.BuildPlan.Operation;
import gudgeon.core.planning.BuildReplay.Fault;
import gudgeon.core.planning.BuildReplay.Rule;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Does the steps of a way back one after the other and looks at the state that each leaves. */
final class BuildReplaySteps {
    private final BuildEvidence told;
    private final Set<String> tolerated;

    BuildReplaySteps(BuildEvidence told) {
        this.told = told;
        tolerated = told.world.loose();
    }

    void perform(Operation step) {
        Set<String> looseBefore = looseNow();
        if (!looseBefore.isEmpty() && !holdsStill(step, looseBefore)) {
            told.fault(Rule.LOOSE, step, "loose meanwhile: " + looseBefore);
        }
        switch (step.kind()) {
            case PLACE -> place(step);
            case SNUG -> snug(step);
            case TIGHTEN, STAGE, ANGLE -> turn(step);
            case RESTORE -> restore(step);
            case SEAL, FILL, BLEED, CHECK, WAIT -> {}
        }
        if (step.holdUp().blockedBy().stream()
                .anyMatch(lack -> lack.kind() == LackKind.LOOSE || lack.kind() == LackKind.OPEN_TIME)) {
            tolerated.addAll(told.world.loose());
        }
    }

    private Set<String> looseNow() {
        Set<String> loose = told.world.loose();
        loose.removeAll(tolerated);
        return loose;
    }

    private boolean holdsStill(Operation step, Set<String> loose) {
        return switch (step.kind()) {
            case PLACE, SEAL, WAIT -> true;
            case SNUG -> step.subject().parts().stream().anyMatch(loose::contains);
            case TIGHTEN, STAGE, ANGLE, RESTORE, FILL, BLEED, CHECK -> false;
        };
    }

    private void place(Operation step) {
        Set<String> set = new LinkedHashSet<>(step.subject().parts());
        int lift = told.lifts.indexOf(set);
        if (lift < 0 || !told.world.away.containsAll(set)) {
            told.fault(Rule.LIFT, step, "it is no lift of the strip, or is in place already");
            return;
        }
        if (!told.world.isWhole(set)) {
            told.fault(Rule.LIFT, step, "it is not whole");
        }
        told.world.away.removeAll(set);
        for (String part : set) {
            int number = 0;
            for (Condition.Clause clause : told.engine.part(part).lift().clauses()) {
                if (!told.world.liftClause(clause, set) && !told.droppedLifts.contains(part + "#" + number)) {
                    told.fault(Rule.LIFT, step, "it could not be lifted again: " + part);
                }
                number++;
            }
        }
        for (Joint joint : told.engine.joints()) {
            if (!told.world.carries(joint, set) && !told.droppedHangs.contains(lift + "#" + joint.id())) {
                told.fault(Rule.HANGS, step, "it would hang on " + joint.id());
            }
        }
        BuildPlan.Handling handling = step.handling();
        Optional<LiftingWay> way = handling == null
                ? Optional.empty()
                : told.request.ways().stream()
                        .filter(w -> w.name().equals(handling.way()))
                        .findFirst();
        if (handling == null || way.isEmpty() || !told.world.liftedBy(set, way.get())) {
            told.fault(Rule.MASS, step, "no way of lifting carries " + told.world.mass(set) + " kg");
        } else if (Math.abs(handling.massKilograms() - told.world.mass(set)) > 1e-5) {
            told.fault(Rule.MASS, step, "its mass is " + told.world.mass(set));
        }
        told.lacks(step, LackKind.TOO_HEAVY, told.request.ways().stream().noneMatch(w -> told.world.liftedBy(set, w)), Rule.MASS);
    }

    private void snug(Operation step) {
        Joint joint = told.engine.joint(step.subject().ref());
        if (!told.world.open.remove(joint.id())) {
            told.fault(Rule.STAGES, step, "it is put together twice, or was not undone");
            return;
        }
        Undone undone = Optional.ofNullable(told.history.get(joint.id())).orElseThrow();
        meets(step, joint, undone);
        room(step, joint.freedom().access(), joint, undone);
        standing(step, joint, undone, undone.ready());
        if (joint.makeup().stages().isEmpty() && told.cracking(joint).isEmpty()) {
            buildRoom(step, joint);
        }
        fasteners(step, joint);
    }

    private void turn(Operation step) {
        Joint joint = told.engine.joint(step.subject().ref());
        if (told.world.open.contains(joint.id())) {
            told.fault(Rule.STAGES, step, "it is not put together");
        }
        Undone undone = Optional.ofNullable(told.history.get(joint.id())).orElseThrow();
        Optional<Ready> cracking = told.cracking(joint);
        Undone then = cracking.map(ready -> told.history.get(ready.id())).orElse(undone);
        meets(step, joint, then);
        room(step, cracking.map(Ready::access).orElse(joint.freedom().access()), joint, then);
        standing(step, joint, undone, then.ready());
        cracking.ifPresent(ready -> {
            Set<String> needed = new LinkedHashSet<>(ready.needs());
            needed.removeAll(then.droppedNeeds());
            if (!told.world.ready.containsAll(stillThere(needed))) {
                told.fault(Rule.NEEDS, step, "its cracking needs " + needed);
            }
            held(step, then);
        });
        held(step, undone);
        buildRoom(step, joint);
        fasteners(step, joint);
        if (step.kind() != Kind.TIGHTEN) {
            boolean unknown = step.tightening() == null
                    || joint.makeup()
                            .stages()
                            .get(step.tightening().stage() - 1)
                            .threadState()
                            .isEmpty();
            told.lacks(step, LackKind.THREAD_STATE, unknown, Rule.THREAD_STATE);
        }
    }

    private void meets(Operation step, Joint joint, Undone then) {
        for (String part : joint.between()) {
            if (told.world.away.contains(part) != then.away().contains(part)) {
                told.fault(
                        Rule.MEETS,
                        step,
                        part + (told.world.away.contains(part) ? " is not in place" : " is in place already"));
            }
        }
    }

    private void room(Operation step, Condition access, Joint joint, Undone then) {
        for (Condition.Clause clause : access.clauses()) {
            if (!then.dropped().contains(clause) && !told.world.clauseHolds(clause, joint.between())) {
                told.fault(Rule.ROOM, step, "no access: " + clause);
            }
        }
    }

    private void buildRoom(Operation step, Joint joint) {
        if (!told.world.holds(joint.freedom().accessBuild(), joint.between())) {
            told.fault(Rule.ROOM, step, "no room to tighten: " + joint.freedom().accessBuild());
        }
    }

    /** What a joint needs as long as it is not tight, of what had been done when it was undone or cracked. */
    private void standing(Operation step, Joint joint, Undone undone, Set<String> done) {
        Set<String> needed = new LinkedHashSet<>(joint.freedom().needs());
        joint.freedom().opens().stream()
                .filter(id -> !joint.freedom().drains().contains(id))
                .forEach(id -> needed.addAll(told.engine.circuit(id).makeSafe()));
        needed.removeAll(undone.droppedNeeds());
        needed.retainAll(done);
        if (!told.world.ready.containsAll(stillThere(needed))) {
            told.fault(Rule.NEEDS, step, "it needs " + needed);
        }
    }

    private Set<String> stillThere(Set<String> needed) {
        Set<String> result = new LinkedHashSet<>(needed);
        result.retainAll(told.history.keySet());
        return result;
    }

    private void held(Operation step, Undone then) {
        if (!then.holds().isEmpty()
                && then.holds().stream().noneMatch(joints -> joints.stream().noneMatch(told.world.open::contains))) {
            told.fault(Rule.HOLD, step, "nothing holds it: " + then.holds());
        }
    }

    private void fasteners(Operation step, Joint joint) {
        List<String> order =
                joint.makeup().fasteners().stream().map(Fastener::id).toList();
        List<Integer> pattern = joint.makeup().pattern();
        if (!pattern.isEmpty()) {
            List<String> all = order;
            order = pattern.stream().map(position -> all.get(position - 1)).toList();
        }
        BuildPlan.Tightening tightening = step.tightening();
        if (tightening == null || !tightening.fasteners().equals(order)) {
            told.fault(Rule.FASTENERS, step, "the fasteners are not " + order);
            return;
        }
        if (tightening.stage() > 0) {
            Makeup.Stage stage = joint.makeup().stages().get(tightening.stage() - 1);
            if (!Optional.ofNullable(tightening.torque()).equals(stage.torque())
                    || !Optional.ofNullable(tightening.angle()).equals(stage.angle())
                    || !tightening.threadState().equals(stage.threadState())) {
                told.fault(Rule.STAGES, step, "it is not stage " + tightening.stage());
            }
        }
    }

    private void restore(Operation step) {
        Ready ready = told.engine.ready(step.subject().ref());
        if (!told.world.ready.remove(ready.id())) {
            told.fault(Rule.TAKEN_BACK_EARLY, step, "it was not there");
            return;
        }
        Undone then = Optional.ofNullable(told.history.get(ready.id())).orElseThrow();
        for (Condition.Clause clause : ready.access().clauses()) {
            if (!then.dropped().contains(clause) && !told.world.clauseHolds(clause, null)) {
                told.fault(Rule.ROOM, step, "no access: " + clause);
            }
        }
        Set<String> needed = new LinkedHashSet<>(ready.needs());
        needed.removeAll(then.droppedNeeds());
        if (!told.world.ready.containsAll(stillThere(needed))) {
            told.fault(Rule.NEEDS, step, "it needs " + needed);
        }
        for (Joint joint : told.engine.joints()) {
            boolean strapped = joint.hang().flatMap(Joint.Hang::strap).equals(Optional.of(ready.id()));
            if (strapped
                    && !told.world.open.contains(joint.id())
                    && joint.between().stream().anyMatch(told.world.away::contains)
                    && joint.between().stream().anyMatch(part -> !told.world.away.contains(part))
                    && hangsToo(joint)) {
                told.fault(Rule.TAKEN_BACK_EARLY, step, "something hangs on " + joint.id());
            }
        }
        if (ready.kind() == ReadyKind.SUPPORT) {
            BuildWorld strict = told.world.copy();
            for (String id : told.history.keySet()) {
                if (told.engine.findJoint(id).isPresent() && !isTight(id, step)) {
                    strict.open.add(id);
                }
            }
            Set<String> loose = strict.loose();
            loose.removeAll(tolerated);
            if (!loose.isEmpty()) {
                told.fault(Rule.LOOSE, step, "loose without it: " + loose);
            }
        }
    }

    /** Whether what is away on a flexible joint is more than it holds by itself. */
    private boolean hangsToo(Joint joint) {
        String strap = joint.hang().flatMap(Joint.Hang::strap).orElse("");
        return told.lifts.stream()
                .filter(set -> set.stream().anyMatch(told.world.away::contains))
                .filter(set -> Optional.ofNullable(told.readyAtLift.get(set))
                        .orElse(Set.of())
                        .contains(strap))
                .filter(set -> joint.between().stream().anyMatch(set::contains))
                .anyMatch(set -> told.world.mass(set) > joint.hang().orElseThrow().holdsKilograms() + 1e-9);
    }

    private boolean isTight(String joint, Operation now) {
        return told.last(joint).map(told::at).orElse(Integer.MAX_VALUE) < told.at(now);
    }

    void leftOver() {
        if (!told.world.away.isEmpty()) {
            told.faults.add(new Fault(Rule.PARTS_LEFT_OVER, "", "left over: " + told.world.away));
        }
        if (!told.world.open.isEmpty()) {
            told.faults.add(new Fault(Rule.JOINT_LEFT_OPEN, "", "left open: " + told.world.open));
        }
        for (String id : told.world.ready) {
            Ready ready = told.engine.ready(id);
            boolean takenBack = Set.of(ReadyKind.SUPPORT, ReadyKind.STRAP, ReadyKind.PIN, ReadyKind.HOLDING_TOOL)
                            .contains(ready.kind())
                    || (Set.of(ReadyKind.MAKE_SAFE, ReadyKind.RECORD).contains(ready.kind())
                            && !ready.effect().restore().isEmpty());
            if (takenBack) {
                told.faults.add(new Fault(Rule.LEFT_IN, id, "it is still in"));
            }
        }
    }
}
