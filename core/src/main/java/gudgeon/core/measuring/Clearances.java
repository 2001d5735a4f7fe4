package gudgeon.core.measuring;

import java.util.List;
import java.util.stream.Stream;

/** Clearances: by difference, by a crushed thread of plastic, by feelers, and a ring's gap at another place of its bore. */
public final class Clearances {
    private Clearances() {}

    /** What a bore leaves round a shaft, in diameter. Errors that both readings share cancel. */
    public static Derived between(Derived bore, Derived shaft) {
        return new Derived(
                Derived.Trait.CLEARANCE,
                bore.estimate().minus(shaft.estimate()),
                Stream.concat(bore.from().stream(), shaft.from().stream()).toList());
    }

    /**
     * A crushed thread laid beside its printed strip.
     *
     * @param place which bearing
     * @param narrowest_mm the smallest clearance read along the thread: where it is crushed widest
     * @param widest_mm the largest
     * @param step_mm the difference of neighbouring marks of the strip
     */
    public static Derived byStrip(String place, double narrowest_mm, double widest_mm, double step_mm) {
        if (!(narrowest_mm > 0 && widest_mm >= narrowest_mm && step_mm > 0)) {
            throw new IllegalArgumentException(
                    "a strip shows clearances above zero, the smaller first, with steps above zero, not " + narrowest_mm
                            + ", " + widest_mm + ", " + step_mm);
        }
        Budget budget = Budget.of(
                Contribution.within(new Source(Source.Kind.STRIP_CHART, place), Spread.RECTANGULAR, step_mm / 2, 1),
                Contribution.within(
                        new Source(Source.Kind.FORM, place), Spread.RECTANGULAR, (widest_mm - narrowest_mm) / 2, 1));
        return new Derived(
                Derived.Trait.CLEARANCE, new Estimate((narrowest_mm + widest_mm) / 2, budget), List.of(place));
    }

    /**
     * A gap tried with feelers.
     *
     * @param trait gap, clearance or flatness
     * @param passes_mm the thickest that passes; zero when none does
     * @param stops_mm the thinnest that does not
     */
    public static Derived byFeeler(Derived.Trait trait, String place, double passes_mm, double stops_mm) {
        if (!(passes_mm >= 0 && stops_mm > passes_mm && Double.isFinite(stops_mm))) {
            throw new IllegalArgumentException(
                    "the feeler that stops is thicker than the one that passes, not " + stops_mm + " and " + passes_mm);
        }
        Budget budget = Budget.of(Contribution.within(
                new Source(Source.Kind.FEELER, place), Spread.RECTANGULAR, (stops_mm - passes_mm) / 2, 1));
        return new Derived(trait, new Estimate((passes_mm + stops_mm) / 2, budget), List.of(place));
    }

    /**
     * A ring's end gap at another place of its bore: it closes by pi times what the bore is smaller there. The ring is squared in
     * the bore with a piston at the depth where it was read.
     *
     * @param gap as read
     * @param there the bore at the depth where the gap was read
     * @param tightest the bore where it is smallest within the ring's travel
     */
    public static Derived ringGapAt(Derived gap, Derived there, Derived tightest) {
        Estimate closes = there.estimate().minus(tightest.estimate()).times(Math.PI);
        return new Derived(
                Derived.Trait.GAP,
                gap.estimate().minus(closes),
                Stream.of(gap, there, tightest)
                        .flatMap(one -> one.from().stream())
                        .toList());
    }
}
