package gudgeon.app.cli;

import gudgeon.app.desk.CrankingQuestion;
import gudgeon.app.desk.RatioQuestion;
import gudgeon.app.desk.TeethQuestion;
import gudgeon.app.desk.TouchQuestion.Place;
import gudgeon.app.document.Figures;
import gudgeon.app.document.GeometryWords;
import gudgeon.core.geometry.CombustionSpace.Doubt;
import gudgeon.core.geometry.ValveTiming;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Answers about shape and timing on the screen. */
final class GeometryText {
    private final Layout layout;

    GeometryText(Screen screen) {
        this.layout = new Layout(screen);
    }

    void ratio(RatioQuestion.Answer answer) {
        row(
                "compression ratio",
                fixed(answer.ratio(), 2) + " ± " + fixed(answer.expandedUncertainty(), 2) + " (about 95 %)");
        row("swept", fixed(answer.sweptCm3(), 1) + " cm³");
        row("left above the piston", fixed(answer.leftCm3(), 2) + " cm³");
        row("squish, cold", fixed(answer.squishMm(), 2) + " mm");
        layout.blank();
        layout.line("What the doubt comes from, largest first:");
        for (Doubt doubt : answer.doubts()) {
            row("  " + GeometryWords.measured(doubt.of()), "± " + fixed(doubt.contribution(), 3));
        }
        if (answer.after().ratio() != answer.ratio() || answer.after().squishMm() != answer.squishMm()) {
            layout.blank();
            layout.line("After the change:");
            row("  compression ratio", fixed(answer.after().ratio(), 2));
            row("  swept", fixed(answer.after().sweptCm3(), 1) + " cm³");
            row("  squish, cold", fixed(answer.after().squishMm(), 2) + " mm");
            layout.paragraph(0, GeometryWords.CHECK_AFTER_SKIM);
        }
    }

    void cranking(CrankingQuestion.Answer answer) {
        row("effective ratio", fixed(answer.effectiveRatio(), 2));
        row("air outside", fixed(answer.airKPa(), 1) + " kPa");
        row(
                "gauge pressure, typical",
                fixed(answer.leastBar(), 1) + " to " + fixed(answer.mostBar(), 1) + " bar");
        layout.paragraph(0, GeometryWords.CRANKING);
    }

    void teeth(TeethQuestion.Answer answer) {
        GeometryWords.teeth(answer.oneToothCrankDeg(), answer.wheelMarksMeetTurns(), answer.crankAndBeltMeetTurns(), answer
                        .allMeetTurns())
                .forEach(line -> layout.paragraph(0, line));
        if (!answer.fourStroke()) {
            layout.paragraph(
                    0,
                    "The camshaft goes round once in " + Figures.plain(answer.ratio())
                            + " turns of the crank. In a four-stroke it would be 2: maybe a count is wrong.",
                    Ink.DANGER);
        }
    }

    void timing(ValveTiming timing) {
        timingAnswer(timing).forEach((name, value) -> row(name.replace('_', ' '), Figures.plain(value) + "°"));
    }

    static Map<String, Double> timingAnswer(ValveTiming timing) {
        Map<String, Double> answer = new LinkedHashMap<>();
        answer.put("inlet_duration", timing.inletDuration_deg());
        answer.put("exhaust_duration", timing.exhaustDuration_deg());
        answer.put("overlap", timing.overlap_deg());
        answer.put("inlet_lobe_after_top", timing.inletLobeCentre_atdc());
        answer.put("exhaust_lobe_before_top", timing.exhaustLobeCentre_btdc());
        answer.put("between_the_lobes_in_camshaft_degrees", timing.lobeSeparation_camDeg());
        return answer;
    }

    void touch(List<Place> places) {
        for (Place place : places) {
            row(
                    GeometryWords.out(place.teethLate()),
                    fixed(place.clearanceMm(), 2) + " mm at " + fixed(place.crankDeg(), 0) + "°: "
                            + place.verdict().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        }
        layout.paragraph(0, GeometryWords.TURN_BY_HAND);
    }

    private void row(String name, String value) {
        layout.line(String.format(Locale.ROOT, "%-40s %s", name, value));
    }

    private static String fixed(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
