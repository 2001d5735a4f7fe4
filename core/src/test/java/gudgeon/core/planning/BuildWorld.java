package gudgeon.core.planning;

import gudgeon.core.engine.Circuit;
import gudgeon.core.engine.Condition;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.engine.Literal;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.ReadyKind;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The state of docs/planning.md in plain sets of ids, written from that page for the tests of the way back. Slow on purpose;
 * it shares no code with the planners.
 */
final class BuildWorld {
    final Engine engine;
    final Set<String> open = new LinkedHashSet<>();
    final Set<String> ready = new LinkedHashSet<>();
    final Set<String> away = new LinkedHashSet<>();

    BuildWorld(Engine engine) {
        this.engine = engine;
    }

    BuildWorld copy() {
        BuildWorld other = new BuildWorld(engine);
        other.open.addAll(open);
        other.ready.addAll(ready);
        other.away.addAll(away);
        return other;
    }

    /** The parts of the piece that a part belongs to. */
    Set<String> piece(String part) {
        Set<String> found = new LinkedHashSet<>(List.of(part));
        Deque<String> queue = new ArrayDeque<>(found);
        while (!queue.isEmpty()) {
            String next = queue.remove();
            for (Joint joint : engine.joints()) {
                if (!joint.flexible()
                        && !open.contains(joint.id())
                        && joint.between().contains(next)) {
                    joint.between().stream().filter(found::add).forEach(queue::add);
                }
            }
        }
        return found;
    }

    double mass(Set<String> parts) {
        return parts.stream()
                .mapToDouble(part -> engine.part(part).massKilograms())
                .sum();
    }

    boolean liftedBy(Set<String> parts, LiftingWay way) {
        return mass(parts) <= way.limitKilograms() + 1e-9;
    }

    boolean isWhole(Set<String> parts) {
        return parts.stream().allMatch(part -> parts.containsAll(piece(part)))
                && !parts.contains(engine.workplace().base());
    }

    /** The lift condition of one clause, with a set that counts as away. */
    boolean liftClause(Condition.Clause clause, Set<String> set) {
        return clause.alternatives().stream()
                .anyMatch(alternative -> alternative.literals().stream().allMatch(literal -> switch (literal) {
                    case Literal.PartAway part -> set.contains(part.id()) || away.contains(part.id());
                    case Literal.JointUndone joint -> open.contains(joint.id()) || ready.contains(joint.id());
                }));
    }

    /** Whether a flexible joint lets a set hang on it or does not have to carry it. */
    boolean carries(Joint joint, Set<String> set) {
        if (open.contains(joint.id()) || !joint.flexible()) {
            return true;
        }
        boolean inside = joint.between().stream().anyMatch(set::contains);
        boolean outside = joint.between().stream().anyMatch(part -> !set.contains(part) && !away.contains(part));
        if (!inside || !outside) {
            return true;
        }
        Joint.Hang hang = joint.hang().orElseThrow();
        return mass(set) <= hang.holdsKilograms() + 1e-9
                || hang.strap().map(ready::contains).orElse(false);
    }

    /** Whether a set that is not away can be lifted, mass left aside. */
    boolean canLift(Set<String> set) {
        return isWhole(set)
                && set.stream().noneMatch(away::contains)
                && set.stream()
                        .allMatch(part ->
                                engine.part(part).lift().clauses().stream().allMatch(clause -> liftClause(clause, set)))
                && engine.joints().stream().allMatch(joint -> carries(joint, set));
    }

    boolean outOfTheWay(String part, List<String> judge) {
        return judge.stream().noneMatch(other -> piece(other).contains(part))
                && judge.stream().allMatch(other -> away.contains(part) || away.contains(other));
    }

    /** @param judge parts to be out of the way of; null when a part literal means that it is away */
    boolean clauseHolds(Condition.Clause clause, @Nullable List<String> judge) {
        return clause.alternatives().stream()
                .anyMatch(alternative -> alternative.literals().stream().allMatch(literal -> switch (literal) {
                    case Literal.PartAway part ->
                        judge == null ? away.contains(part.id()) : outOfTheWay(part.id(), judge);
                    case Literal.JointUndone joint -> open.contains(joint.id()) || ready.contains(joint.id());
                }));
    }

    boolean holds(Condition condition, @Nullable List<String> judge) {
        return condition.clauses().stream().allMatch(clause -> clauseHolds(clause, judge));
    }

    boolean circuitReady(Circuit circuit) {
        return ready.containsAll(circuit.makeSafe())
                && (circuit.drains().isEmpty() || circuit.drains().stream().anyMatch(ready::contains));
    }

    boolean free(Joint joint) {
        return !joint.freedom().licensed()
                && holds(joint.freedom().access(), joint.between())
                && ready.containsAll(joint.freedom().needs())
                && joint.freedom().opens().stream()
                        .filter(id -> !joint.freedom().drains().contains(id))
                        .allMatch(id -> circuitReady(engine.circuit(id)));
    }

    boolean free(Ready operation) {
        return ready.containsAll(operation.needs())
                && holds(
                        operation.access(),
                        operation.joint().map(id -> engine.joint(id).between()).orElse(null));
    }

    boolean heldBy(Joint.Hold hold) {
        return hold.alternatives().isEmpty()
                || hold.alternatives().stream()
                        .anyMatch(joints -> joints.stream().noneMatch(open::contains));
    }

    /** Parts of pieces that are loose. */
    Set<String> loose() {
        Set<String> settled = new LinkedHashSet<>(piece(engine.workplace().base()));
        for (Ready operation : engine.ready()) {
            if (ready.contains(operation.id()) && operation.kind() == ReadyKind.SUPPORT) {
                operation.effect().carries().forEach(part -> settled.addAll(piece(part)));
            }
        }
        boolean grows = true;
        while (grows) {
            grows = false;
            for (Joint joint : engine.joints()) {
                if (open.contains(joint.id())
                        && joint.freedom().rests()
                        && joint.between().stream().anyMatch(settled::contains)) {
                    for (String part : joint.between()) {
                        grows |= settled.addAll(piece(part));
                    }
                }
            }
        }
        Set<String> loose = new LinkedHashSet<>();
        engine.parts().forEach(part -> loose.add(part.id()));
        loose.removeAll(settled);
        loose.removeAll(away);
        return loose;
    }
}
