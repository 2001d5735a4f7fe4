package gudgeon.app.document;

import gudgeon.core.measuring.Derived;
import gudgeon.core.measuring.MonteCarlo;
import gudgeon.core.measuring.Remark;
import gudgeon.core.measuring.Rework;
import gudgeon.core.measuring.TwoLimits;
import java.util.ArrayList;
import java.util.List;

/** What has to be said beside measured values, in words. */
public final class MeasureRemarks {
    private final MeasureFigures figures;

    public MeasureRemarks(MeasureFigures figures) {
        this.figures = figures;
    }

    /** A remark as one or more sentences. */
    public List<String> words(Remark remark) {
        if (remark instanceof Remark.CommonSize common) {
            return commonSize(common);
        }
        return remark instanceof Remark.Harmonics harmonics ? harmonics(harmonics) : List.of(sentence(remark));
    }

    private String sentence(Remark remark) {
        return switch (remark) {
            case Remark.Warmth(String place, double added, double part, double standard) ->
                "Brought to 20 °C: " + signed(added) + " at " + place + " (part " + Figures.plain(part)
                        + " °C, setting standard " + Figures.plain(standard) + " °C).";
            case Remark.Offset(String instrument, double added) ->
                "The last check of the " + instrument + " was taken into account: " + signed(added) + ".";
            case Remark.WarmthUnknown() ->
                "Nobody said how warm it was: 20 °C give or take 10 K is in the budget. A thermometer makes it narrower.";
            case Remark.RepeatsAssumed(double deviation) ->
                "How well readings repeat was not tried out, it is assumed (" + figures.length(deviation)
                        + "). Read one place five times once.";
            case Remark.OutOfRange(String instrument, double size, TwoLimits range) ->
                "The " + instrument + " measures from " + figures.length(range.lower()) + " to "
                        + figures.length(range.upper()) + ", not " + figures.length(size) + ".";
            case Remark.CheckLongAgo(String instrument, int days) ->
                "The " + instrument + " was last checked " + days + " days ago: try it on a setting standard.";
            case Remark.TwoPointOnly() -> "Readings straight across do not see three or five lobes.";
            case Remark.FirstOrderFails(Derived.Trait trait, MonteCarlo drawn) ->
                (drawn.low() < 2 * drawn.standardDeviation()
                                ? "The " + MeasureWords.trait(trait)
                                        + " lies so near zero that the scatter of readings alone makes some: "
                                : "The usual sum of squares does not hold for the " + MeasureWords.trait(trait) + ": ")
                        + "drawn " + drawn.trials() + " times it is between " + figures.of(trait, drawn.low()) + " and "
                        + figures.of(trait, drawn.high()) + ".";
            case Remark.LineOnly() ->
                "The places lie on one line: this is straightness along it, not flatness of the face.";
            case Remark.TooFewPlaces(int places) ->
                Figures.count(places, "place")
                        + ": a plane passes through any three, a line through any two. Read more.";
            case Remark.TwoWays(String of, double first, double second, double error) ->
                (error <= 1 ? "Both ways agree" : "The two ways do not agree, one of them is wrong") + " on " + of
                        + ": "
                        + figures.length(first) + " by difference, " + figures.length(second) + " by strip, E_n "
                        + Figures.plain(Math.round(error * 100) / 100.0) + ".";
            case Remark.HoneTo(String piston, java.util.Optional<TwoLimits> bore) ->
                bore.map(to -> "For " + piston + " hone to " + figures.length(to.lower()) + " up to "
                                + figures.length(to.upper()) + ".")
                        .orElse("For " + piston
                                + " the clearance wanted is narrower than the piston is known: measure it better.");
            case Remark.ReadAgain(String of, Derived.Trait trait, String place) ->
                "Take again: " + MeasureWords.place(trait, place) + " (it decides the " + MeasureWords.trait(trait)
                        + (of.equals(MeasureWords.trait(trait)) ? "" : " of " + of) + ").";
            case Remark.Bow(double along, double bow, double direction, double runOut) ->
                "The shaft bows most at " + figures.length(along) + ": " + figures.length(bow) + " towards "
                        + Math.round(direction) + "° from the mark, which a dial there shows as "
                        + figures.length(runOut)
                        + ". Pressing is a machine shop's work.";
            case Remark.ZoneNotProven() -> "The outline is a short arc: a smaller zone may exist far off.";
            case Remark.Rate(double perThousand, double expanded) ->
                "Wear: " + figures.length(perThousand) + " ± " + figures.length(expanded)
                        + " each thousand hours or kilometres.";
            case Remark.CommonSize common -> String.join(" ", commonSize(common));
            case Remark.Harmonics harmonics -> String.join(" ", harmonics(harmonics));
        };
    }

    private List<String> commonSize(Remark.CommonSize remark) {
        Rework.Common common = remark.common();
        String centre =
                remark.centring() == Rework.Centring.OLD_CENTRE ? "about the old centre" : "about the worn centre";
        String step = remark.oversize() ? "oversize" : "undersize";
        List<String> sentences = new ArrayList<>();
        sentences.add(common.step_mm()
                .map(size -> "One " + step + " cleans all of them " + centre + ": " + figures.length(size)
                        + ", finished at " + figures.length(common.size_mm()) + ".")
                .orElse("No " + step + " on offer cleans all of them " + centre + "."));
        sentences.add(common.deciding().name() + " decides: it needs "
                + figures.length(common.deciding().size_mm())
                + ", its wear being " + figures.length(common.deciding().wear_mm())
                + (remark.centring() == Rework.Centring.OLD_CENTRE
                        ? ", which lies on one side and counts twice."
                        : "."));
        return sentences;
    }

    private List<String> harmonics(Remark.Harmonics remark) {
        List<String> sentences = new ArrayList<>();
        sentences.add("At " + figures.length(remark.along_mm()) + ": the axis lies "
                + figures.length(remark.turn().offset_mm()) + " off towards "
                + Math.round(remark.turn().direction_deg()) + "° from the mark.");
        if (remark.turn().oval_mm() > 0) {
            sentences.add("Oval by " + figures.length(remark.turn().oval_mm()) + " in diameter, longest at "
                    + Math.round(remark.turn().ovalDirection_deg()) + "°.");
        }
        return sentences;
    }

    private String signed(double added_mm) {
        return (added_mm < 0 ? "-" : "+") + figures.length(Math.abs(added_mm));
    }
}
