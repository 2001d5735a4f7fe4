package gudgeon.core.finding;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What must be known of an engine to judge its readings.
 *
 * @param diesel whether it fires by compression
 * @param cylinders 1 to 16
 * @param layout firing order and banks
 * @param sweptVolume of all cylinders, m³
 * @param ratio compression ratio
 * @param healthy what its compression should be
 * @param cranking speed and height
 * @param has what it is or has, in the words of the knowledge's {@code needs}
 */
public record EngineFacts(
        boolean diesel,
        int cylinders,
        Layout layout,
        double sweptVolume,
        double ratio,
        Healthy healthy,
        Cranking cranking,
        Set<String> has) {
    /** More cylinders are not read. */
    public static final int MOST_CYLINDERS = 16;

    public EngineFacts {
        if (cylinders < 1 || cylinders > MOST_CYLINDERS) {
            throw new IllegalArgumentException(cylinders + " cylinders; 1 to " + MOST_CYLINDERS + " are read");
        }
        if (!(sweptVolume > 0 && ratio > 1)) {
            throw new IllegalArgumentException("a volume of " + sweptVolume + " m³ or a ratio of " + ratio);
        }
        has = Collections.unmodifiableSet(new LinkedHashSet<>(has));
    }

    /**
     * @param firing cylinders in firing order; empty when it is not known
     * @param banks cylinders of each bank, in the order in which they stand side by side
     */
    public record Layout(List<Integer> firing, List<List<Integer>> banks) {
        public Layout {
            firing = List.copyOf(firing);
            banks = banks.stream().map(List::copyOf).toList();
        }

        /** All in one line, the firing order not known. */
        public static Layout inline(int cylinders) {
            List<Integer> bank = new ArrayList<>();
            for (int i = 1; i <= cylinders; i++) {
                bank.add(i);
            }
            return new Layout(List.of(), List.of(bank));
        }
    }

    /**
     * @param compression healthy gauge pressure while cranking, Pa; empty when it is not known
     * @param known whether it was measured on this engine or stands in its manual, and is not only a typical figure
     */
    public record Healthy(OptionalDouble compression, boolean known) {}

    /**
     * @param speed while cranking, rev/min
     * @param ambient pressure of the air, Pa
     */
    public record Cranking(double speed, double ambient) {}

    /** Whether the engine is and has all of these. */
    public boolean fits(List<String> needs) {
        return has.containsAll(needs);
    }
}
