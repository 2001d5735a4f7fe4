package gudgeon.app.document;

import gudgeon.core.engine.Engine;
import gudgeon.core.planning.StripPlan;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Bag numbers: every joint of a plan that has fasteners gets the next number, in the order of the plan. */
public final class Bags {
    private final Map<String, String> labels;

    private Bags(Map<String, String> labels) {
        this.labels = Collections.unmodifiableMap(labels);
    }

    /** Bags that are there. @param labels by joint, what is written on its bag */
    public static Bags written(Map<String, String> labels) {
        return new Bags(new LinkedHashMap<>(labels));
    }

    /** The bags of a plan. */
    public static Bags of(Engine engine, StripPlan plan) {
        return of(engine, plan, 1);
    }

    /** The bags of a plan. @param first the number of the first of them */
    public static Bags of(Engine engine, StripPlan plan, int first) {
        Map<String, String> labels = new LinkedHashMap<>();
        for (StripPlan.Operation operation : plan.operations()) {
            if ((operation.kind() == StripPlan.Kind.UNDO || operation.kind() == StripPlan.Kind.CUT)
                    && !engine.joint(operation.id()).makeup().fasteners().isEmpty()) {
                labels.put(operation.id(), String.valueOf(first + labels.size()));
            }
        }
        return new Bags(labels);
    }

    /** What is written on a joint's bag; empty when it has none. */
    public Optional<String> label(String joint) {
        return Optional.ofNullable(labels.get(joint));
    }

    /** The number of a joint's bag; empty when it has none. */
    public OptionalInt find(String joint) {
        return label(joint)
                .filter(label -> label.matches("[0-9]{1,6}"))
                .map(label -> OptionalInt.of(Integer.parseInt(label)))
                .orElse(OptionalInt.empty());
    }

    /** How many bags are needed. */
    public int count() {
        return labels.size();
    }
}
