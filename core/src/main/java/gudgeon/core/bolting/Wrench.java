package gudgeon.core.bolting;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A torque wrench of the toolbox.
 *
 * <p>Source: [ISO6789] a wrench is tested at 20, 60 and 100 % of its largest value; below 20 % it promises nothing.
 *
 * @param name what it is called
 * @param least_Nm lowest value on its scale, at least 0
 * @param most_Nm highest value on its scale, above the lowest
 */
public record Wrench(String name, double least_Nm, double most_Nm) {
    /** Share of the largest value from which a wrench can be relied on. */
    public static final double RELIABLE_FROM = 0.2;

    /** Rounding that no scale shows. */
    private static final double HAIR = 1e-9;

    public Wrench {
        if (!(least_Nm >= 0 && most_Nm > least_Nm)) {
            throw new IllegalArgumentException("the scale of wrench " + name + " goes from " + least_Nm + " to "
                    + most_Nm + " N·m. Maybe the ends are swapped?");
        }
    }

    /** Whether a wrench suits a setting. */
    public enum Fit {
        SUITS,
        /** On the scale, but in the part below 20 % of its largest value. */
        LOW_ON_SCALE,
        BELOW_SCALE,
        ABOVE_SCALE
    }

    /** Lowest setting to be relied on, newton metres. */
    public double reliableFrom_Nm() {
        return Math.max(least_Nm, RELIABLE_FROM * most_Nm);
    }

    /** Whether it suits a setting. */
    public Fit fit(double setting_Nm) {
        if (!(setting_Nm > 0)) {
            throw new IllegalArgumentException("a setting is above 0, not " + setting_Nm);
        }
        if (setting_Nm < least_Nm - HAIR) {
            return Fit.BELOW_SCALE;
        }
        if (setting_Nm > most_Nm + HAIR) {
            return Fit.ABOVE_SCALE;
        }
        return setting_Nm < reliableFrom_Nm() - HAIR ? Fit.LOW_ON_SCALE : Fit.SUITS;
    }

    /**
     * One wrench judged for one setting.
     *
     * @param fit whether it suits
     */
    public record Judged(Wrench wrench, Fit fit) {}

    /**
     * Which wrench for a setting.
     *
     * @param best the finest that suits: the one with the smallest largest value; empty when none does
     * @param judged all, in the order given
     */
    public record Choice(Optional<Wrench> best, List<Judged> judged) {
        public Choice {
            judged = List.copyOf(judged);
        }
    }

    /** The choice among wrenches for a setting; of equally fine ones the first. */
    public static Choice choose(double setting_Nm, List<Wrench> wrenches) {
        List<Judged> judged = wrenches.stream()
                .map(wrench -> new Judged(wrench, wrench.fit(setting_Nm)))
                .toList();
        Optional<Wrench> best = judged.stream()
                .filter(each -> each.fit() == Fit.SUITS)
                .map(Judged::wrench)
                .min(Comparator.comparingDouble(Wrench::most_Nm));
        return new Choice(best, judged);
    }
}
