package gudgeon.core.session;

import java.util.OptionalDouble;

/**
 * Minutes kept at the end to close up. They are kept, not forecast: no pace stretches them.
 *
 * @param kept minutes that the person keeps in any case; empty when worked out from what stands open
 * @param base minutes to put tools away, write down, wash
 * @param perOpening minutes to cover one opening
 * @param perSurface minutes to oil one bare surface
 */
public record CloseUp(OptionalDouble kept, double base, double perOpening, double perSurface) {
    /** Ten minutes, half a minute for each opening, one for each bare surface. Typical, common practice. */
    public static final CloseUp USUAL = new CloseUp(OptionalDouble.empty(), 10, 0.5, 1);

    public CloseUp {
        if (!(base >= 0 && perOpening >= 0 && perSurface >= 0 && kept.orElse(0) >= 0)) {
            throw new IllegalArgumentException("minutes to close up are 0 or more");
        }
    }

    /** The person keeps this much. */
    public static CloseUp keeping(double minutes) {
        return new CloseUp(OptionalDouble.of(minutes), USUAL.base, USUAL.perOpening, USUAL.perSurface);
    }

    /** What closing up takes when one stops so. */
    public double minutes(Stand stand) {
        return kept.orElse(base
                + perOpening * stand.openings().size()
                + perSurface * stand.bare().size());
    }
}
