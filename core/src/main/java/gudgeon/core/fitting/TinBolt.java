package gudgeon.core.fitting;

import gudgeon.core.bolting.MetricThread;

/**
 * Bolts of one kind in a tin: alike, so that it does not matter which of them goes where.
 *
 * @param name what they are called
 * @param count how many, above 0
 * @param thread their thread; unified threads in millimetres
 * @param leftHand whether it is a left-hand thread
 * @param length_mm under the head, above 0
 */
public record TinBolt(String name, int count, MetricThread thread, boolean leftHand, double length_mm) {
    public TinBolt {
        if (count < 1 || count > 500) {
            throw new IllegalArgumentException("bolts " + name + ": 1 to 500 of a kind, not " + count);
        }
        if (!(length_mm > 0 && length_mm < 2000)) {
            throw new IllegalArgumentException("bolts " + name + ": a length of " + length_mm + " mm. Maybe the unit?");
        }
    }
}
