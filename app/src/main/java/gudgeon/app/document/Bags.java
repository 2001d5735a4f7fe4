package gudgeon.app.document;

import gudgeon.core.engine.Engine;
import gudgeon.core.planning.StripPlan;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalInt;

/** Bag numbers: every joint of a plan that has fasteners gets the next number, in the order of the plan. */
public final class Bags {
    private final Map<String, Integer> numbers;

    private Bags(Map<String, Integer> numbers) {
        this.numbers = Collections.unmodifiableMap(numbers);
    }

    /** The bags of a plan. */
    public static Bags of(Engine engine, StripPlan plan) {
        Map<String, Integer> numbers = new LinkedHashMap<>();
        for (StripPlan.Operation operation : plan.operations()) {
            if ((operation.kind() == StripPlan.Kind.UNDO || operation.kind() == StripPlan.Kind.CUT)
                    && !engine.joint(operation.id()).makeup().fasteners().isEmpty()) {
                numbers.put(operation.id(), numbers.size() + 1);
            }
        }
        return new Bags(numbers);
    }

    /** The number of a joint's bag; empty when it has none. */
    public OptionalInt find(String joint) {
        Integer number = numbers.get(joint);
        return number == null ? OptionalInt.empty() : OptionalInt.of(number);
    }

    /** How many bags are needed. */
    public int count() {
        return numbers.size();
    }
}
