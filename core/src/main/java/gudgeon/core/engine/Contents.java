package gudgeon.core.engine;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * How high a fluid stands in its circuit, and at which heights joints open it.
 *
 * @param curve volume below a height, at two heights or more, both growing; straight between them. Nothing stands below the
 *     first, the fluid's surface when full is at the last
 * @param openedAt joint id to the height in mm, above the file's zero, at which undoing it opens the circuit
 */
public record Contents(List<Point> curve, Map<String, Double> openedAt) {
    /**
     * A point of the curve.
     *
     * @param height_mm above the file's zero
     * @param litres what stands below it; 0 at the first point
     */
    public record Point(double height_mm, double litres) {}

    public Contents {
        curve = List.copyOf(curve);
        openedAt = Collections.unmodifiableMap(new LinkedHashMap<>(openedAt));
        if (curve.size() < 2 || curve.getFirst().litres() != 0) {
            throw new IllegalArgumentException("A level curve needs two points at least, the first with nothing below it.");
        }
        for (int i = 1; i < curve.size(); i++) {
            if (!(curve.get(i).height_mm() > curve.get(i - 1).height_mm()
                    && curve.get(i).litres() >= curve.get(i - 1).litres())) {
                throw new IllegalArgumentException("Heights and volumes of a level curve must grow from point to point.");
            }
        }
    }

    /** The surface's height when full, in mm. */
    public double full_mm() {
        return curve.getLast().height_mm();
    }

    /** What stands below a height, in litres. */
    public double below(double height_mm) {
        if (height_mm <= curve.getFirst().height_mm()) {
            return 0;
        }
        for (int i = 1; i < curve.size(); i++) {
            Point to = curve.get(i);
            if (height_mm <= to.height_mm()) {
                Point from = curve.get(i - 1);
                double share = (height_mm - from.height_mm()) / (to.height_mm() - from.height_mm());
                return from.litres() + share * (to.litres() - from.litres());
            }
        }
        return curve.getLast().litres();
    }

    /** The height at which a joint opens it, in mm; empty when the file does not say. */
    public OptionalDouble openedBy(String joint) {
        Double height = openedAt.get(joint);
        return height == null ? OptionalDouble.empty() : OptionalDouble.of(height);
    }
}
