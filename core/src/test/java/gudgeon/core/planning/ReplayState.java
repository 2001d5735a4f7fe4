package gudgeon.core.planning;

import gudgeon.core.engine.Circuit;
import gudgeon.core.engine.Condition;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Feature;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Literal;
import gudgeon.core.engine.Part;
import gudgeon.core.engine.Ready;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A state of the strip, with the definitions of docs/planning.md written out one by one in plain sets of ids. Slow and
 * literal on purpose; it shares nothing with the planner nor with {@link BruteModel}.
 */
final class ReplayState {
    final Engine engine;
    final Set<String> undone = new LinkedHashSet<>();
    final Set<String> done = new LinkedHashSet<>();
    final Set<String> moved = new LinkedHashSet<>();

    ReplayState(Engine engine, Collection<String> undone, Collection<String> done) {
        this.engine = engine;
        this.undone.addAll(undone);
        this.done.addAll(done);
    }

    String base() {
        return engine.workplace().base();
    }

    /** Parts that hang together with this one by intact joints, rigid ones only or of any kind. */
    private Set<String> component(String start, boolean rigidOnly) {
        Set<String> seen = new LinkedHashSet<>();
        Deque<String> open = new ArrayDeque<>();
        seen.add(start);
        open.add(start);
        while (!open.isEmpty()) {
            String part = open.remove();
            for (Joint joint : engine.joints()) {
                boolean counts = !undone.contains(joint.id()) && !(rigidOnly && joint.flexible());
                if (counts && joint.between().contains(part)) {
                    joint.between().stream().filter(seen::add).forEach(open::add);
                }
            }
        }
        return seen;
    }

    Set<String> piece(String part) {
        return component(part, true);
    }

    boolean off(String part) {
        return !component(part, false).contains(base());
    }

    /** All pieces, each once, in file order of their first part. */
    List<Set<String>> pieces() {
        List<Set<String>> pieces = new ArrayList<>();
        Set<String> seen = new LinkedHashSet<>();
        for (Part part : engine.parts()) {
            if (!seen.contains(part.id())) {
                Set<String> piece = piece(part.id());
                seen.addAll(piece);
                pieces.add(piece);
            }
        }
        return pieces;
    }

    double mass(Collection<String> parts) {
        return parts.stream().mapToDouble(id -> engine.part(id).massKilograms()).sum();
    }

    /** Whole pieces, none the base piece and none moved. */
    boolean wholePieces(Set<String> set) {
        boolean whole = set.stream().allMatch(part -> set.containsAll(piece(part)));
        return !set.isEmpty() && whole && !set.contains(base()) && set.stream().noneMatch(moved::contains);
    }

    /** Parts of the set whose lift condition is not met when the set moves together. */
    List<String> badLiftConditions(Set<String> set) {
        List<String> bad = new ArrayList<>();
        for (String id : set) {
            for (Condition.Clause clause : engine.part(id).lift().clauses()) {
                boolean met = false;
                for (Condition.Alternative alternative : clause.alternatives()) {
                    met |= alternative.literals().stream().allMatch(literal -> switch (literal) {
                        case Literal.PartAway part -> set.contains(part.id()) || moved.contains(part.id());
                        case Literal.JointUndone joint -> undone.contains(joint.id());
                    });
                }
                if (!met) {
                    bad.add(id);
                }
            }
        }
        return bad;
    }

    /** Intact flexible joints from the set to something neither in it nor moved. */
    List<Joint> hangers(Set<String> set) {
        List<Joint> hangers = new ArrayList<>();
        for (Joint joint : engine.joints()) {
            boolean inside = joint.between().stream().anyMatch(set::contains);
            boolean outside = joint.between().stream().anyMatch(part -> !set.contains(part) && !moved.contains(part));
            if (joint.flexible() && !undone.contains(joint.id()) && inside && outside) {
                hangers.add(joint);
            }
        }
        return hangers;
    }

    /** Flexible joints that neither hold the mass of the set nor are relieved by their strap. */
    List<String> badHangers(Set<String> set) {
        List<String> bad = new ArrayList<>();
        for (Joint joint : hangers(set)) {
            Joint.Hang hang = joint.hang().orElseThrow();
            boolean strapped =
                    hang.strap().isPresent() && done.contains(hang.strap().get());
            if (hang.holdsKilograms() < mass(set) && !strapped) {
                bad.add(joint.id());
            }
        }
        return bad;
    }

    /** The part is out of the way of a joint between these parts. */
    boolean outOfTheWay(String part, List<String> between) {
        for (String end : between) {
            if (piece(end).contains(part)) {
                return false;
            }
        }
        for (String end : between) {
            if (!moved.contains(part) && !moved.contains(end)) {
                return false;
            }
        }
        return true;
    }

    /** Access of something between these parts; no parts: a part literal means that the part is moved. */
    boolean access(Condition condition, List<String> between) {
        for (Condition.Clause clause : condition.clauses()) {
            boolean met = false;
            for (Condition.Alternative alternative : clause.alternatives()) {
                met |= alternative.literals().stream().allMatch(literal -> switch (literal) {
                    case Literal.PartAway part ->
                        between.isEmpty() ? moved.contains(part.id()) : outOfTheWay(part.id(), between);
                    case Literal.JointUndone joint -> undone.contains(joint.id());
                });
            }
            if (!met) {
                return false;
            }
        }
        return true;
    }

    boolean access(Ready operation) {
        Optional<String> joint = operation.joint();
        List<String> between =
                joint.isEmpty() ? List.of() : engine.joint(joint.get()).between();
        return access(operation.access(), between);
    }

    boolean circuitReady(Circuit circuit) {
        boolean drained =
                circuit.drains().isEmpty() || circuit.drains().stream().anyMatch(done::contains);
        return done.containsAll(circuit.makeSafe()) && drained;
    }

    /** At least one alternative has all its joints intact, or nothing is asked. */
    boolean holds(Joint.Hold hold) {
        return hold.alternatives().isEmpty()
                || hold.alternatives().stream()
                        .anyMatch(joints -> joints.stream().noneMatch(undone::contains));
    }

    /** Parts of settled pieces: the base piece, carried pieces, and what rests on a settled piece. */
    Set<String> settled() {
        Set<String> settled = new LinkedHashSet<>(piece(base()));
        for (Ready operation : engine.ready()) {
            if (done.contains(operation.id())) {
                operation.effect().carries().forEach(part -> settled.addAll(piece(part)));
            }
        }
        boolean grown = true;
        while (grown) {
            grown = false;
            for (Joint joint : engine.joints()) {
                boolean rests = undone.contains(joint.id()) && joint.freedom().rests();
                if (rests && joint.between().stream().anyMatch(settled::contains)) {
                    for (String part : joint.between()) {
                        grown |= settled.addAll(piece(part));
                    }
                }
            }
        }
        return settled;
    }

    /** Parts of loose pieces: neither settled nor moved. */
    Set<String> loose() {
        Set<String> settled = settled();
        Set<String> loose = new LinkedHashSet<>();
        for (Part part : engine.parts()) {
            if (!settled.contains(part.id()) && !moved.contains(part.id())) {
                loose.add(part.id());
            }
        }
        return loose;
    }

    /** Whether everything the target asks for is reached. */
    boolean reached(StripRequest.Target target) {
        boolean off = target.off().stream().allMatch(part -> off(part) && moved.contains(part));
        boolean measured = target.measure().stream().allMatch(id -> {
            Feature feature = engine.findFeature(id).orElseThrow();
            return access(feature.access(), feature.parts());
        });
        return off && moved.containsAll(target.aside()) && undone.containsAll(target.open()) && measured;
    }
}
