package gudgeon.app.document;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Consecutive steps in the same place. */
final class ZoneRuns {
    private ZoneRuns() {}

    /** Runs of steps with equal keys, in order. */
    static <T> List<List<T>> of(List<T> steps, Function<T, String> zone) {
        List<List<T>> runs = new ArrayList<>();
        for (T step : steps) {
            if (runs.isEmpty() || !zone.apply(runs.getLast().getFirst()).equals(zone.apply(step))) {
                runs.add(new ArrayList<>());
            }
            runs.getLast().add(step);
        }
        return runs;
    }
}
