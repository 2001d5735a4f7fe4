package gudgeon.core.planning;

import gudgeon.core.engine.LiftingWay;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * Why a goal cannot be reached: obstacles are lifted out of the way in thought, all together first, then put back one by
 * one; those that cannot be put back are the reasons, a set of which none is superfluous.
 */
final class Diagnosis {
    private final Model model;
    private final StripRequest request;
    private final BitSet permitted;
    private final Goal goal;
    private final BitSet start = new BitSet();

    /** One thing that could be otherwise. */
    private sealed interface Obstacle {
        record Weight() implements Obstacle {}

        record Hanging() implements Obstacle {}

        record Barred(int joint) implements Obstacle {}
    }

    Diagnosis(Model model, StripRequest request, BitSet permitted, Goal goal) {
        this.model = model;
        this.request = request;
        this.permitted = permitted;
        this.goal = goal;
        request.undone().forEach(id -> start.set(model.action(id)));
        request.done().forEach(id -> start.set(model.action(id)));
    }

    Blocked blocked(BitSet loose) {
        if (!loose.isEmpty()) {
            return new Blocked(List.of(reason(Blocked.Kind.LOOSE, ids(loose))), List.of());
        }
        List<Obstacle> removed = new ArrayList<>();
        for (int a = model.actions - 1; a >= 0; a--) {
            if (!permitted.get(a) && !start.get(a)) {
                removed.add(new Obstacle.Barred(a));
            }
        }
        removed.add(new Obstacle.Hanging());
        removed.add(new Obstacle.Weight());
        List<List<String>> empty = List.of(List.of());
        if (!reaches(removed)) {
            return new Blocked(List.of(new Blocked.Reason(Blocked.Kind.NO_WAY, missing(removed), 0, conflict())), empty);
        }
        for (Obstacle obstacle : List.copyOf(removed)) {
            List<Obstacle> fewer = new ArrayList<>(removed);
            fewer.remove(obstacle);
            if (reaches(fewer)) {
                removed = fewer;
            }
        }
        List<Blocked.Reason> reasons = new ArrayList<>();
        for (Obstacle obstacle : removed) {
            reasons.add(reason(obstacle, removed));
        }
        return new Blocked(reasons.reversed(), empty);
    }

    private Blocked.Reason reason(Obstacle obstacle, List<Obstacle> removed) {
        return switch (obstacle) {
            case Obstacle.Weight weight -> tooHeavy(removed);
            case Obstacle.Hanging hanging -> {
                List<Obstacle> with = new ArrayList<>(removed);
                with.remove(hanging);
                yield reason(Blocked.Kind.WOULD_HANG, missing(with));
            }
            case Obstacle.Barred barred -> {
                String id = model.actionId(barred.joint);
                yield reason(
                        model.licensed[barred.joint] ? Blocked.Kind.LICENSED : Blocked.Kind.WILL_NOT_COME,
                        List.of(id));
            }
        };
    }

    /** The lightest piece that must be lifted and is too heavy, and the engine's ways of lifting that would do. */
    private Blocked.Reason tooHeavy(List<Obstacle> removed) {
        long limit = Model.heaviest(request.means().ways());
        long needed = smallestLimit(removed, limit);
        State before = reach(removed, needed - 1).sweep(allowed(removed));
        Optional<BitSet> heavy = firstHeavier(before, removed, needed);
        List<String> ways = model.engine.workplace().waysOfLifting().stream()
                .filter(way -> Model.milligrams(way.limitKilograms()) >= needed)
                .map(LiftingWay::name)
                .toList();
        return new Blocked.Reason(
                Blocked.Kind.TOO_HEAVY, heavy.map(this::ids).orElse(List.of()), needed / 1e6, ways);
    }

    private long smallestLimit(List<Obstacle> removed, long tooLittle) {
        long low = tooLittle;
        long high = 0;
        for (long mass : model.mass) {
            high += mass;
        }
        while (high - low > 1) {
            long middle = low + (high - low) / 2;
            if (goal.reached(reach(removed, middle).sweep(allowed(removed)))) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private Optional<BitSet> firstHeavier(State before, List<Obstacle> removed, long limit) {
        int[] set = reach(removed, limit).lifting().next(before);
        if (set.length == 0) {
            return Optional.empty();
        }
        BitSet parts = new BitSet();
        for (int part : set) {
            parts.set(part);
        }
        return Optional.of(parts);
    }

    private boolean reaches(List<Obstacle> removed) {
        long limit = removed.contains(new Obstacle.Weight())
                ? Long.MAX_VALUE
                : Model.heaviest(request.means().ways());
        return goal.reached(reach(removed, limit).sweep(allowed(removed)));
    }

    private Reach reach(List<Obstacle> removed, long limit) {
        boolean anythingHangs = removed.contains(new Obstacle.Hanging());
        return new Reach(model, new Lifting(model, limit, anythingHangs), start);
    }

    private BitSet allowed(List<Obstacle> removed) {
        BitSet allowed = (BitSet) permitted.clone();
        for (Obstacle obstacle : removed) {
            if (obstacle instanceof Obstacle.Barred barred) {
                allowed.set(barred.joint);
            }
        }
        return allowed;
    }

    /** Target parts that stay out of reach. */
    private List<String> missing(List<Obstacle> removed) {
        long limit = removed.contains(new Obstacle.Weight())
                ? Long.MAX_VALUE
                : Model.heaviest(request.means().ways());
        State end = reach(removed, limit).sweep(allowed(removed));
        BitSet parts = (BitSet) goal.moved().clone();
        parts.andNot(end.moved);
        BitSet off = (BitSet) goal.off().clone();
        off.and(end.linked());
        parts.or(off);
        List<String> ids = new ArrayList<>(ids(parts));
        goal.actions().stream().filter(a -> !end.done.get(a)).forEach(a -> ids.add(model.actionId(a)));
        return ids;
    }

    private List<String> conflict() {
        return ReachAudit.conflict(model, goal);
    }

    private List<String> ids(BitSet parts) {
        return parts.stream().mapToObj(model::partId).toList();
    }

    private static Blocked.Reason reason(Blocked.Kind kind, List<String> about) {
        return new Blocked.Reason(kind, about, 0, List.of());
    }
}
