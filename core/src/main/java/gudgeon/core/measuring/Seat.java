package gudgeon.core.measuring;

import java.util.Collections;
import java.util.List;

/**
 * A valve's seat: how wide the contact is round about, and where on the valve's face it lies.
 *
 * @param narrowest_mm least width
 * @param widest_mm largest width
 * @param offMiddle_mm how far the middle of the contact lies outside (positive) or inside the middle of the valve's face
 */
public record Seat(double narrowest_mm, double widest_mm, double offMiddle_mm) {
    /**
     * A seat.
     *
     * @param widths_mm round about, at least one, above zero
     * @param outside_mm bare face of the valve left outside the contact
     * @param inside_mm bare face left inside it
     */
    public static Seat of(List<Double> widths_mm, double outside_mm, double inside_mm) {
        if (widths_mm.isEmpty() || widths_mm.stream().anyMatch(width -> !(width > 0))) {
            throw new IllegalArgumentException("a seat has widths above zero, not " + widths_mm);
        }
        if (!(outside_mm >= 0 && inside_mm >= 0)) {
            throw new IllegalArgumentException(
                    "what is left beside the contact is zero or more, not " + outside_mm + ", " + inside_mm);
        }
        return new Seat(Collections.min(widths_mm), Collections.max(widths_mm), (inside_mm - outside_mm) / 2);
    }
}
