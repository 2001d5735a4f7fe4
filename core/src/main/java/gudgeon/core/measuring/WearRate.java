package gudgeon.core.measuring;

import java.util.List;

/**
 * Wear brought forward: a part that lost so much in so many hours loses as much again in as many. The first hours wear faster than
 * the later ones, so a rate from the whole life is cautious for a part that was run in; common practice.
 *
 * @param now the trait as measured
 * @param whenNew the trait when new, with the doubt of its tolerance
 * @param run how long it ran: hours, or kilometres
 */
public record WearRate(Estimate now, Estimate whenNew, double run) {
    public WearRate {
        if (!(run > 0 && Double.isFinite(run))) {
            throw new IllegalArgumentException("a rate of wear needs a time above zero, not " + run);
        }
    }

    /** A size when new that is known by its limits only. */
    public static Estimate newWithin(TwoLimits limits) {
        double half = (limits.upper() - limits.lower()) / 2;
        return new Estimate(
                (limits.upper() + limits.lower()) / 2,
                Budget.of(Contribution.within(new Source(Source.Kind.NEW_SIZE, ""), Spread.RECTANGULAR, half, 1)));
    }

    /** Change for each hour or kilometre. */
    public Estimate rate() {
        return now.minus(whenNew).times(1 / run);
    }

    /**
     * The trait after a further run. What is known badly now is known worse then.
     *
     * @param further hours or kilometres; zero or more
     */
    public Estimate after(double further) {
        if (!(further >= 0 && Double.isFinite(further))) {
            throw new IllegalArgumentException("a further run is zero or more, not " + further);
        }
        double share = further / run;
        return new Estimate(
                now.value() + (now.value() - whenNew.value()) * share,
                Budget.sum(
                        List.of(now.budget().times(1 + share), whenNew.budget().times(-share))));
    }
}
