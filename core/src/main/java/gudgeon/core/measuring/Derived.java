package gudgeon.core.measuring;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What follows from readings.
 *
 * @param trait what it is
 * @param estimate its value and budget
 * @param from the places that decide it, the one on the larger side first
 */
public record Derived(Trait trait, Estimate estimate, List<String> from) {
    public Derived {
        from = List.copyOf(from);
    }

    /** What can follow from readings. */
    public enum Trait {
        LARGEST,
        SMALLEST,
        MEAN,
        TAPER,
        OUT_OF_ROUND,
        WEAR,
        CLEARANCE,
        GAP,
        FLATNESS,
        SKIM,
        RUN_OUT,
        BEND,
        ROUNDNESS,
        CYLINDRICITY,
        LIFT,
        HEIGHT,
        LOAD,
        RATE,
        SQUARENESS,
        TWIST,
        POSITION,
        SIZE
    }

    /** The value. */
    public double value() {
        return estimate.value();
    }

    /** Of the places that decide, the one whose repeats say least: the one reading to take again. Empty when none is named. */
    public Optional<String> readAgain() {
        return from.stream().max(Comparator.comparingDouble(this::own).thenComparing(place -> -from.indexOf(place)));
    }

    private double own(String place) {
        return Math.hypot(
                estimate.budget().component(new Source(Source.Kind.REPEATS, place)),
                estimate.budget().component(new Source(Source.Kind.REPEATS_ASSUMED, place)));
    }
}
