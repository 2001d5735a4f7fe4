package gudgeon.app.document;

import gudgeon.core.engine.Engine;
import gudgeon.core.planning.StripPlan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Why a step is in a plan, in plain words. */
public final class WhyWords {
    private static final int MOST_NAMED = 2;

    private final Engine engine;
    private final Names names;

    public WhyWords(Engine engine) {
        this.engine = engine;
        this.names = new Names(engine);
    }

    /** Every reason of a step as a phrase of its own, reasons of one sort gathered, in the order of the plan. */
    public List<String> reasons(StripPlan.Operation operation) {
        List<String> phrases = new ArrayList<>();
        byKind(operation).forEach((kind, whys) -> phrases.add(phrase(kind, whys)));
        return List.copyOf(phrases);
    }

    private static Map<StripPlan.WhyKind, List<StripPlan.Why>> byKind(StripPlan.Operation operation) {
        Map<StripPlan.WhyKind, List<StripPlan.Why>> byKind = new LinkedHashMap<>();
        for (StripPlan.Why why : operation.why()) {
            byKind.computeIfAbsent(why.kind(), kind -> new ArrayList<>()).add(why);
        }
        return byKind;
    }

    /** The reasons of a step that a mechanic can see at the engine, in one line; what was proved is left out. */
    public String inShort(StripPlan.Operation operation) {
        Map<StripPlan.WhyKind, List<StripPlan.Why>> byKind = byKind(operation);
        byKind.keySet().removeIf(kind -> kind == StripPlan.WhyKind.LANDMARK || kind == StripPlan.WhyKind.CHEAPEST_OF);
        List<String> phrases = new ArrayList<>();
        byKind.forEach((kind, whys) -> phrases.add(phrase(kind, whys)));
        return String.join("; ", phrases);
    }

    /** The reasons of a step in one line; empty when the plan gives none. */
    public String because(StripPlan.Operation operation) {
        return String.join("; ", reasons(operation));
    }

    private String phrase(StripPlan.WhyKind kind, List<StripPlan.Why> whys) {
        return switch (kind) {
            case TARGET -> "the goal: " + named(whys, 0);
            case HOLDS -> "holds the " + named(whys, 0);
            case ACCESS -> "in the way of: " + named(whys, 0);
            case LIFT -> "in the way of lifting the " + named(whys, 0);
            case CIRCUIT -> named(whys, 0) + " must be ready before: " + named(whys, 1);
            case NEEDED_BY -> "must come before: " + named(whys, 0);
            case CARRIES -> "carries the " + named(whys, 0);
            case LANDMARK -> "there is no way round it";
            case CHEAPEST_OF -> "cheapest way among " + count(whys);
        };
    }

    private String count(List<StripPlan.Why> whys) {
        List<String> ids = whys.getFirst().ids();
        return ids.size() <= 3 ? Figures.list(ids.stream().map(this::name).toList()) : ids.size() + " alternatives";
    }

    private String named(List<StripPlan.Why> whys, int at) {
        Set<String> found = new LinkedHashSet<>();
        for (StripPlan.Why why : whys) {
            if (why.ids().size() > at) {
                found.add(name(why.ids().get(at)));
            }
        }
        return Figures.list(List.copyOf(found), MOST_NAMED);
    }

    private String name(String id) {
        return engine.findPart(id).isPresent() ? names.part(id) : names.any(id);
    }
}
