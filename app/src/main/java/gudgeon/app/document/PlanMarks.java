package gudgeon.app.document;

import gudgeon.core.planning.StripPlan;
import gudgeon.core.planning.StripRequest;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What a plan does to each part and joint, for a drawing. */
final class PlanMarks {
    private final Map<String, Integer> undone = new HashMap<>();
    private final Map<String, Integer> lifted = new HashMap<>();
    private final Set<String> off = new HashSet<>();
    private final Set<String> aside = new HashSet<>();
    private final Set<String> targets = new HashSet<>();
    private final boolean none;

    private PlanMarks(boolean none) {
        this.none = none;
    }

    /** No plan. */
    static PlanMarks none() {
        return new PlanMarks(true);
    }

    /** A plan and what it is for. */
    static PlanMarks of(StripPlan plan, StripRequest.Target target) {
        PlanMarks marks = new PlanMarks(false);
        marks.targets.addAll(target.off());
        marks.targets.addAll(target.aside());
        for (StripPlan.Operation operation : plan.operations()) {
            switch (operation.kind()) {
                case UNDO, CUT -> marks.undone.put(operation.id(), operation.number());
                case LIFT -> operation.pieces().forEach(part -> marks.lifted.putIfAbsent(part, operation.number()));
                case CRACK_LOOSE, RECORD, MAKE_SAFE, DRAIN, SUPPORT, STRAP, PIN, HOLDING_TOOL -> {}
            }
        }
        if (!plan.operations().isEmpty()) {
            marks.off.addAll(plan.operations().getLast().after().off());
            marks.aside.addAll(plan.operations().getLast().after().aside());
        }
        return marks;
    }

    boolean hasNone() {
        return none;
    }

    boolean undone(String joint) {
        return undone.containsKey(joint);
    }

    /** Whether the part moves or is the goal. */
    boolean concerns(String part) {
        return targets.contains(part) || off.contains(part) || aside.contains(part);
    }

    DrawnEngine.State state(String part) {
        if (targets.contains(part)) {
            return DrawnEngine.State.TARGET;
        }
        if (off.contains(part)) {
            return DrawnEngine.State.OFF;
        }
        return aside.contains(part) ? DrawnEngine.State.ASIDE : DrawnEngine.State.IN_PLACE;
    }

    /** Step that lifts the part, as a list of none or one. */
    List<Integer> liftedIn(String part) {
        Integer number = lifted.get(part);
        return number == null ? List.of() : List.of(number);
    }

    /** Step that undoes the joint, as a list of none or one. */
    List<Integer> undoneIn(String joint) {
        Integer number = undone.get(joint);
        return number == null ? List.of() : List.of(number);
    }

    /** "4", "4,9", "4-6" for steps that follow each other, "4,9+2". */
    static String shortened(Collection<Integer> steps) {
        List<Integer> sorted = steps.stream().distinct().sorted().toList();
        if (sorted.size() > 2 && sorted.getLast() - sorted.getFirst() == sorted.size() - 1) {
            return sorted.getFirst() + "-" + sorted.getLast();
        }
        if (sorted.size() <= 2) {
            return String.join(",", sorted.stream().map(String::valueOf).toList());
        }
        return sorted.get(0) + "," + sorted.get(1) + "+" + (sorted.size() - 2);
    }

    /** Several texts of step numbers as one, at most two of them named. */
    static String joined(List<String> tags) {
        List<Integer> steps = new ArrayList<>();
        for (String tag : tags) {
            if (!tag.matches("[0-9]+(,[0-9]+)*")) {
                return tags.size() == 1 ? tag : tag + "+";
            }
            for (String step : tag.split(",", -1)) {
                steps.add(Integer.valueOf(step));
            }
        }
        return shortened(steps);
    }
}
