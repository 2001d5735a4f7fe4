package gudgeon.core.engine;

import gudgeon.core.quantity.Angle;
import gudgeon.core.quantity.Length;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * The shape of an engine as far as arithmetic needs it. What the file does not say is empty.
 *
 * @param bore of one cylinder
 * @param stroke of one piston
 * @param rod connecting rod, from centre to centre
 * @param compressionRatio cylinder volume at bottom dead centre over that at top, above 1
 * @param basis "typical", or the place in the user's manual; empty when the file gives nothing but bore and stroke
 * @param typical true when nobody but the file vouches for rod, ratio and timing
 */
public record Geometry(
        Optional<Length> bore,
        Optional<Length> stroke,
        Optional<Length> rod,
        OptionalDouble compressionRatio,
        ValveTiming valves,
        Teeth teeth,
        String basis,
        boolean typical) {
    /** Nothing is known. */
    public static final Geometry UNKNOWN = new Geometry(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            OptionalDouble.empty(),
            ValveTiming.UNKNOWN,
            Teeth.UNKNOWN,
            "",
            false);

    public Geometry {
        if (compressionRatio.isPresent() && !(compressionRatio.getAsDouble() > 1)) {
            throw new IllegalArgumentException("a compression ratio of " + compressionRatio.getAsDouble());
        }
    }

    /**
     * When the valves open and close, in degrees of the crank; a negative angle lies on the other side.
     *
     * @param intakeOpens before top dead centre
     * @param intakeCloses after bottom dead centre
     * @param exhaustOpens before bottom dead centre
     * @param exhaustCloses after top dead centre
     */
    public record ValveTiming(
            Optional<Angle> intakeOpens,
            Optional<Angle> intakeCloses,
            Optional<Angle> exhaustOpens,
            Optional<Angle> exhaustCloses) {
        /** Nothing is known. */
        public static final ValveTiming UNKNOWN =
                new ValveTiming(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /**
     * Teeth of the timing drive.
     *
     * @param crank of the crank wheel
     * @param cam of each cam wheel, twice those of the crank wheel in a four-stroke
     * @param belt of the belt, or links of the chain
     */
    public record Teeth(OptionalInt crank, OptionalInt cam, OptionalInt belt) {
        /** Nothing is known. */
        public static final Teeth UNKNOWN = new Teeth(OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty());
    }
}
