package gudgeon.core.planning;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Why each step is in a plan: what it gives access to, which part it holds, which circuit it makes ready, which landmark
 * it answers. Only later steps of the same plan count as reasons.
 */
final class Reasons {
    private final Model model;
    private final StripRequest request;
    private final OpeningSearch.Found opening;
    private final List<OrderSearch.Step> steps;

    Reasons(Model model, StripRequest request, OpeningSearch.Found opening, List<OrderSearch.Step> steps) {
        this.model = model;
        this.request = request;
        this.opening = opening;
        this.steps = steps;
    }

    /** Reasons of an action done as step {@code at}. */
    List<StripPlan.Why> of(int action, int at) {
        List<StripPlan.Why> why = new ArrayList<>();
        if (request.target().open().contains(model.actionId(action))) {
            why.add(because(StripPlan.WhyKind.TARGET, model.actionId(action)));
        }
        if (action < model.joints) {
            later(at, step -> mentions(model.access[step.action()], ~action))
                    .forEach(step -> why.add(because(StripPlan.WhyKind.ACCESS, model.actionId(step.action()))));
            holdsLifted(action, at, why);
        } else {
            circuits(action, at, why);
            carried(action, why);
        }
        later(at, step -> contains(model.needs[step.action()], action))
                .forEach(step -> why.add(because(StripPlan.WhyKind.NEEDED_BY, model.actionId(step.action()))));
        landmark(action).ifPresent(why::add);
        return why;
    }

    /** Reasons of a lift done as step {@code at}. */
    List<StripPlan.Why> ofLift(int at) {
        BitSet set = lifted(steps.get(at));
        List<StripPlan.Why> why = new ArrayList<>();
        purposes(set, at, why);
        return why;
    }

    private void holdsLifted(int joint, int at, List<StripPlan.Why> why) {
        for (int s = at + 1; s < steps.size(); s++) {
            if (steps.get(s).isLift()) {
                BitSet set = lifted(steps.get(s));
                int[] joined = model.jointParts[joint];
                boolean inside = IntStream.of(joined).anyMatch(set::get);
                boolean outside = IntStream.of(joined).anyMatch(p -> !set.get(p));
                if (inside && outside) {
                    int held = IntStream.of(joined).filter(set::get).findFirst().orElseThrow();
                    why.add(because(StripPlan.WhyKind.HOLDS, model.partId(held)));
                    purposes(set, s, why);
                    return;
                }
            }
        }
    }

    /** What moving a set is good for: the target, a later lift, access to a later operation. */
    private void purposes(BitSet set, int at, List<StripPlan.Why> why) {
        for (int p = set.nextSetBit(0); p >= 0; p = set.nextSetBit(p + 1)) {
            String part = model.partId(p);
            if (request.target().off().contains(part) || request.target().aside().contains(part)) {
                why.add(because(StripPlan.WhyKind.TARGET, part));
            }
            for (int s = at + 1; s < steps.size(); s++) {
                OrderSearch.Step step = steps.get(s);
                if (step.isLift()) {
                    for (int other : step.lifted()) {
                        if (mentions(model.lift[other], p)) {
                            why.add(because(StripPlan.WhyKind.LIFT, model.partId(other), part));
                        }
                    }
                } else if (mentions(model.access[step.action()], p)) {
                    why.add(because(StripPlan.WhyKind.ACCESS, model.actionId(step.action()), part));
                }
            }
        }
    }

    private void circuits(int ready, int at, List<StripPlan.Why> why) {
        for (int c = 0; c < model.makeSafe.length; c++) {
            if (contains(model.makeSafe[c], ready) || contains(model.drains[c], ready)) {
                int circuit = c;
                String id = model.engine.circuits().get(c).id();
                later(at, step -> contains(model.opens[step.action()], circuit)).stream()
                        .findFirst()
                        .ifPresent(step -> why.add(
                                because(StripPlan.WhyKind.CIRCUIT, id, model.actionId(step.action()))));
            }
        }
    }

    private void carried(int ready, List<StripPlan.Why> why) {
        for (int part : model.carries[ready]) {
            why.add(because(StripPlan.WhyKind.CARRIES, model.partId(part)));
        }
        for (int j = 0; j < model.joints; j++) {
            if (model.strap[j] == ready) {
                why.add(because(StripPlan.WhyKind.CARRIES, model.partId(model.jointParts[j][0])));
            }
        }
    }

    private Optional<StripPlan.Why> landmark(int action) {
        for (BitSet landmark : opening.landmarks()) {
            if (landmark.get(action)) {
                String[] ids = landmark.stream().mapToObj(model::actionId).toArray(String[]::new);
                return Optional.of(because(
                        ids.length == 1 ? StripPlan.WhyKind.LANDMARK : StripPlan.WhyKind.CHEAPEST_OF, ids));
            }
        }
        return Optional.empty();
    }

    private List<OrderSearch.Step> later(int at, java.util.function.Predicate<OrderSearch.Step> wanted) {
        return steps.subList(at + 1, steps.size()).stream()
                .filter(step -> !step.isLift() && wanted.test(step))
                .toList();
    }

    private BitSet lifted(OrderSearch.Step step) {
        BitSet set = new BitSet(model.parts);
        for (int part : step.lifted()) {
            set.set(part);
        }
        return set;
    }

    private static boolean mentions(int[][][] clauses, int literal) {
        for (int[][] clause : clauses) {
            for (int[] alternative : clause) {
                if (contains(alternative, literal)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean contains(int[] numbers, int wanted) {
        return IntStream.of(numbers).anyMatch(number -> number == wanted);
    }

    private static StripPlan.Why because(StripPlan.WhyKind kind, String... ids) {
        return new StripPlan.Why(kind, List.of(ids));
    }
}
