package gudgeon.core.finding;

import java.util.HashMap;
import java.util.Map;

/**
 * Weights of cylinders that were worked out already, so that leaving one reading out works out only what it touches. Belongs to one
 * model and one thread.
 */
final class Tables {
    private static final int MOST = 6000;

    private final EngineModel model;
    private final Map<CylinderReadings, Integer> numbers = new HashMap<>();
    private final Map<Key, CylinderSlice.Weights> known = new HashMap<>();

    private record Key(int cylinder, int readings, int first, int second, int from, int to, boolean pairs, double beam) {}

    Tables(EngineModel model) {
        this.model = model;
    }

    EngineModel model() {
        return model;
    }

    CylinderSlice.Weights weights(
            CylinderReadings readings, int cylinder, int first, int second, int from, int to, boolean pairs, double beam) {
        int number = numbers.computeIfAbsent(readings, any -> numbers.size());
        Key key = new Key(cylinder, number, first, second, from, to, pairs, beam);
        CylinderSlice.Weights weights = known.get(key);
        if (weights == null) {
            if (known.size() > MOST) {
                known.clear();
            }
            HealthyGrid grid = model.grid().between(from, to);
            weights = new CylinderSlice(model, readings, cylinder, grid).weigh(first, second, pairs, beam);
            known.put(key, weights);
        }
        return weights;
    }
}
