package gudgeon.core.session;

import gudgeon.core.planning.StripPlan;
import gudgeon.core.planning.StripWalk;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The steps of a strip plan that can be done although some cannot: in the order of the plan, each possible when its turn comes,
 * and whatever becomes loose is lifted at once.
 *
 * @param steps in order
 * @param left operations that cannot be done today, or wait for one that cannot, in the order of the plan
 */
public record Doable(List<Turn> steps, List<StripPlan.Operation> left) {
    public Doable {
        steps = List.copyOf(steps);
        left = List.copyOf(left);
    }

    /** A step and the seconds to get to it from the one before. */
    public record Turn(StripPlan.Operation operation, long changeoverSeconds) {}

    /** @param out which operations cannot be done today */
    public static Doable of(StripWalk start, List<StripPlan.Operation> plan, Predicate<StripPlan.Operation> out) {
        List<StripPlan.Operation> open = new ArrayList<>(plan);
        List<Turn> turns = new ArrayList<>();
        StripWalk walk = start;
        boolean again = true;
        while (again) {
            again = false;
            for (StripPlan.Operation operation : List.copyOf(open)) {
                Optional<List<StripPlan.Operation>> run = out.test(operation) || !walk.isPossible(operation)
                        ? Optional.empty()
                        : withLifts(walk, operation, open, out);
                if (run.isPresent()) {
                    for (StripPlan.Operation next : run.get()) {
                        turns.add(new Turn(next, walk.changeoverSeconds(next)));
                        walk = walk.after(next);
                        open.remove(next);
                    }
                    again = true;
                    break;
                }
            }
        }
        return new Doable(turns, open);
    }

    /** An operation with the lifts of the plan that must follow it at once; empty when something would stay loose. */
    private static Optional<List<StripPlan.Operation>> withLifts(
            StripWalk walk,
            StripPlan.Operation operation,
            List<StripPlan.Operation> open,
            Predicate<StripPlan.Operation> out) {
        List<StripPlan.Operation> run = new ArrayList<>(List.of(operation));
        StripWalk after = walk.after(operation);
        while (!after.loose().isEmpty() && after.loose().size() > walk.loose().size()) {
            StripWalk here = after;
            List<StripPlan.Operation> lifts = open.stream()
                    .filter(next -> next.kind() == StripPlan.Kind.LIFT && !run.contains(next) && !out.test(next))
                    .filter(here::isPossible)
                    .toList();
            Optional<StripPlan.Operation> lift = lifts.stream()
                    .filter(next -> open.indexOf(next) == open.indexOf(run.getLast()) + 1)
                    .findFirst()
                    .or(() -> lifts.stream()
                            .filter(next -> next.pieces().stream().anyMatch(here.loose()::contains))
                            .findFirst());
            if (lift.isEmpty()) {
                return Optional.empty();
            }
            run.add(lift.get());
            after = after.after(lift.get());
        }
        return Optional.of(run);
    }
}
