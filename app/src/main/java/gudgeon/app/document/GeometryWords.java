package gudgeon.app.document;

import gudgeon.core.geometry.CombustionSpace.Measured;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/** Words about shape and timing. */
public final class GeometryWords {
    /** What else a skim or another gasket changes. */
    public static final String CHECK_AFTER_SKIM =
            "A skim or a thinner gasket also brings the valves nearer to the pistons, the tips of injectors or plugs further in,"
                    + " and the camshaft later by a belt or chain: measure valve recess and piston-to-valve distance, and"
                    + " keep the head's least height as the manual has it.";

    /** What the band of cranking pressures means. */
    public static final String CRANKING =
            "Throttle open, every plug out, battery full. What matters more than the figure is whether the cylinders agree."
                    + " The manual's figure comes first.";

    /** Before the starter is let near a timing that was touched. */
    public static final String TURN_BY_HAND =
            "Before the starter: two whole turns of the crank by hand, with a spanner, without a hard spot. A hard spot is a"
                    + " valve on a piston: stop, do not force it.";

    private GeometryWords() {}

    /** What was measured. */
    public static String measured(Measured what) {
        return switch (what) {
            case BORE -> "bore";
            case STROKE -> "stroke";
            case CHAMBER -> "chamber";
            case GASKET_THICKNESS -> "gasket's thickness";
            case GASKET_HOLE -> "gasket's hole";
            case DECK -> "deck clearance";
            case DISH -> "piston's dish";
        };
    }

    /** Where the camshaft stands. */
    public static String out(int teethLate) {
        if (teethLate == 0) {
            return "timed right";
        }
        int teeth = Math.abs(teethLate);
        return Figures.count(teeth, teeth == 1 ? "tooth" : "teeth") + (teethLate > 0 ? " late" : " early");
    }

    /** What the teeth say, a sentence each. */
    public static List<String> teeth(
            double oneTooth_deg, long wheels, OptionalLong crankAndBelt, OptionalLong all) {
        List<String> lines = new ArrayList<>();
        lines.add(String.format(java.util.Locale.ROOT, "One tooth is %.2f degrees of the crank.", oneTooth_deg));
        lines.add("The marks on the wheels stand together again after " + turns(wheels)
                + ". If they do not, it is a fault: stop.");
        if (crankAndBelt.isPresent()) {
            lines.add("An ink mark on the belt meets the crank's mark again only after "
                    + turns(crankAndBelt.getAsLong()) + ", and all of them stand as they stood after "
                    + turns(all.orElse(crankAndBelt.getAsLong()))
                    + ". Ink marks that are elsewhere after two turns say nothing.");
        }
        return lines;
    }

    private static String turns(long turns) {
        return turns + (turns == 1 ? " turn" : " turns");
    }
}
