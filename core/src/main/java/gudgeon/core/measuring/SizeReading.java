package gudgeon.core.measuring;

/**
 * A diameter at one place of a bore or journal.
 *
 * @param along_mm how far in, or along
 * @param direction across which direction: thrust, axial; or an angle
 * @param worth what the reading is worth
 */
public record SizeReading(double along_mm, String direction, Reading.Worth worth) {
    double value() {
        return worth.estimate().value();
    }
}
