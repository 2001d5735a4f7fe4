package gudgeon.core.measuring;

import java.util.Optional;

/** What has to be said beside values and verdicts. */
public sealed interface Remark {
    /** Bringing it to 20 °C changed it. @param added_mm by so much */
    record Warmth(String place, double added_mm, double part_C, double standard_C) implements Remark {}

    /** The instrument's check changed it. @param added_mm by so much */
    record Offset(String instrument, double added_mm) implements Remark {}

    /** Nobody said how warm it was: the budget allows for 10 K. */
    record WarmthUnknown() implements Remark {}

    /** Nobody tried out how well readings repeat. @param standardDeviation_mm what was assumed */
    record RepeatsAssumed(double standardDeviation_mm) implements Remark {}

    /** The instrument does not reach such a size. */
    record OutOfRange(String instrument, double size_mm, TwoLimits range_mm) implements Remark {}

    /** The last check is long ago. */
    record CheckLongAgo(String instrument, int days) implements Remark {}

    /** Readings across cannot see three or five lobes. */
    record TwoPointOnly() implements Remark {}

    /** First order does not do. @param drawn the result's distribution as drawn */
    record FirstOrderFails(Derived.Trait trait, MonteCarlo drawn) implements Remark {}

    /** The places lie on one line: straightness along it, not flatness. */
    record LineOnly() implements Remark {}

    /** No more places than any plane passes through: nothing of flatness is known. */
    record TooFewPlaces(int places) implements Remark {}

    /** Two ways compared. @param normalisedError one or less: they agree */
    record TwoWays(String of, double first, double second, double normalisedError) implements Remark {}

    /** A common size to cut to. */
    record CommonSize(Rework.Common common, Rework.Centring centring, boolean oversize, double nominal_mm)
            implements Remark {}

    /** A bore to hone to. @param bore_mm empty when the uncertainty leaves nothing */
    record HoneTo(String piston, Optional<TwoLimits> bore_mm) implements Remark {}

    /** The one reading to take again. */
    record ReadAgain(String of, Derived.Trait trait, String place) implements Remark {}

    /** Where a shaft bows. @param runOut_mm what a dial shows there */
    record Bow(double along_mm, double bow_mm, double direction_deg, double runOut_mm) implements Remark {}

    /** Once round: an axis shifted towards an angle; twice: an oval. */
    record Harmonics(double along_mm, Turn turn) implements Remark {}

    /** The zone of least width may have been missed: the outline is a short arc. */
    record ZoneNotProven() implements Remark {}

    /** Change for each thousand hours or kilometres. */
    record Rate(double perThousand_mm, double expanded_mm) implements Remark {}
}
