package gudgeon.core.measuring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Sizes to work to: the smallest oversize that cleans all bores, the least undersize that cleans all journals, the size to hone
 * to. Common practice: wear lies on one side, so a cut about the old centre must reach twice as deep as one about the centre of
 * the worn hole.
 */
public final class Rework {
    private Rework() {}

    /** About which centre it is cut. */
    public enum Centring {
        /** Where the maker had it: square to the crank, but one-sided wear counts twice. */
        OLD_CENTRE,
        /** The middle of the worn surface: least metal, but off the maker's place by half the wear. */
        WORN_CENTRE
    }

    /**
     * One bore or journal.
     *
     * @param name cylinder 1, main 3 ...
     * @param worst where it is worn most: largest of a bore, smallest of a journal
     * @param unworn where it is not worn; the nominal size when nobody measured it
     */
    public record Worn(String name, Derived worst, Estimate unworn) {}

    /**
     * What one of them needs.
     *
     * @param name of the bore or journal
     * @param size_mm the size that cleans it with 95 % probability, finishing allowance included
     * @param wear_mm worst less unworn, at most what the centring doubles
     */
    public record Need(String name, double size_mm, double wear_mm) {}

    /**
     * A common size.
     *
     * @param needs one a bore or journal, in their order
     * @param deciding the one that needs most
     * @param step_mm the step chosen: oversize or undersize; empty when none of those on offer does
     * @param size_mm the finished size at that step; NaN when none does
     */
    public record Common(List<Need> needs, Need deciding, Optional<Double> step_mm, double size_mm) {
        public Common {
            needs = List.copyOf(needs);
        }
    }

    /**
     * The smallest oversize on offer that cleans every bore.
     *
     * @param nominal_mm the standard size
     * @param steps_mm oversizes on offer, as 0.25, 0.50
     * @param allowance_mm what honing takes off after boring, in diameter, so that the cut leaves no old surface
     */
    public static Common oversize(
            List<Worn> bores, double nominal_mm, List<Double> steps_mm, double allowance_mm, Centring centring) {
        List<Need> needs = needs(bores, 1, allowance_mm, centring);
        Need deciding =
                needs.stream().max(Comparator.comparingDouble(Need::size_mm)).orElseThrow();
        Optional<Double> step = steps_mm.stream()
                .sorted()
                .filter(oversize -> nominal_mm + oversize >= deciding.size_mm())
                .findFirst();
        return new Common(
                needs,
                deciding,
                step,
                step.map(oversize -> nominal_mm + oversize).orElse(Double.NaN));
    }

    /**
     * The least undersize on offer that cleans every journal.
     *
     * @param steps_mm undersizes on offer, as 0.25, 0.50, above zero
     * @param least_mm the smallest size that the maker allows; journals are not ground below
     */
    public static Common undersize(
            List<Worn> journals,
            double nominal_mm,
            List<Double> steps_mm,
            double allowance_mm,
            Centring centring,
            double least_mm) {
        List<Need> needs = needs(journals, -1, allowance_mm, centring);
        Need deciding =
                needs.stream().min(Comparator.comparingDouble(Need::size_mm)).orElseThrow();
        Optional<Double> step = steps_mm.stream()
                .sorted()
                .filter(undersize -> nominal_mm - undersize <= deciding.size_mm())
                .filter(undersize -> nominal_mm - undersize >= least_mm)
                .findFirst();
        return new Common(
                needs,
                deciding,
                step,
                step.map(undersize -> nominal_mm - undersize).orElse(Double.NaN));
    }

    private static List<Need> needs(List<Worn> all, int sign, double allowance_mm, Centring centring) {
        if (all.isEmpty()) {
            throw new IllegalArgumentException("no bore or journal to clean");
        }
        if (!(allowance_mm >= 0)) {
            throw new IllegalArgumentException("a finishing allowance is zero or more, not " + allowance_mm);
        }
        List<Need> needs = new ArrayList<>();
        for (Worn worn : all) {
            double wear =
                    Math.max(0, sign * (worn.worst().value() - worn.unworn().value()));
            double base = worn.worst().value() + sign * (centring == Centring.OLD_CENTRE ? wear : 0);
            double sure =
                    worn.worst().estimate().oneSided(DecisionRule.SURE) * (centring == Centring.OLD_CENTRE ? 2 : 1);
            needs.add(new Need(worn.name(), base + sign * (sure + allowance_mm), wear));
        }
        return needs;
    }

    /**
     * The bore to hone to for a piston as measured.
     *
     * @param piston its size
     * @param least_mm smallest clearance wanted
     * @param most_mm largest clearance wanted
     * @return from which to which size the bore may be so that the clearance is met with 95 % probability, whatever the piston is
     *     within its uncertainty; empty when the uncertainty leaves nothing between
     */
    public static Optional<TwoLimits> honeTo(Derived piston, double least_mm, double most_mm) {
        double sure = piston.estimate().oneSided(DecisionRule.SURE);
        double from = piston.value() + least_mm + sure;
        double to = piston.value() + most_mm - sure;
        return from <= to ? Optional.of(new TwoLimits(from, to)) : Optional.empty();
    }
}
