package gudgeon.core.measuring;

/**
 * A height measured over a place of a face. Heights may be in a unit of their own; vertical widths are then in that unit.
 *
 * @param x_mm place along the face
 * @param y_mm place across the face
 * @param z_mm height over any plane of reference
 */
public record FacePoint(double x_mm, double y_mm, double z_mm) {
    public FacePoint {
        if (!(Double.isFinite(x_mm) && Double.isFinite(y_mm) && Double.isFinite(z_mm))) {
            throw new IllegalArgumentException(
                    "a point of a face needs three finite numbers, not " + x_mm + ", " + y_mm + ", " + z_mm);
        }
    }
}
