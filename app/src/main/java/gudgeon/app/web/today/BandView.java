package gudgeon.app.web.today;

import gudgeon.app.desk.FinishForecast;
import gudgeon.app.document.Figures;
import gudgeon.app.document.SessionWords;
import gudgeon.core.forecast.Bands;
import java.util.List;

/** How much is left, as two bars: delays independent, delays going together. */
public final class BandView {
    private static final double WIDTH = 320;

    private final FinishForecast forecast;

    BandView(FinishForecast forecast) {
        this.forecast = forecast;
    }

    /**
     * One bar, in units of the drawing.
     *
     * @param from 10 %
     * @param width from 10 to 90 %
     * @param middle 50 %
     */
    public record Bar(String name, String from, String width, String middle, String text) {}

    public List<Bar> bars() {
        return List.of(
                bar("Delays one by one", forecast.whole().independent()),
                bar("Delays all together", forecast.whole().together()));
    }

    private Bar bar(String name, Bands bands) {
        double end = Math.max(
                        forecast.whole().independent().p90(),
                        forecast.whole().together().p90())
                * 1.05;
        return new Bar(
                name,
                place(bands.p10(), end),
                place(bands.p90() - bands.p10(), end),
                place(bands.p50(), end),
                hours(bands.p10()) + " to " + hours(bands.p90()) + ", half of the time within " + hours(bands.p50()));
    }

    private static String place(double minutes, double end) {
        return String.valueOf(Math.round(minutes / end * WIDTH * 10) / 10.0);
    }

    private static String hours(double minutes) {
        return Math.round(minutes / 60) + " h";
    }

    /** "1.7 times the file's minutes, from 42 timed steps". */
    public String pace() {
        String median = Figures.plain(Math.round(forecast.pace().median() * 100) / 100.0);
        return forecast.pace().timed() == 0
                ? median + " times the file's minutes: the usual pace, until steps are timed"
                : median + " times the file's minutes, from " + forecast.pace().timed() + " timed steps";
    }

    /** Dates at the rate so far; empty when nothing was timed. */
    public String dates() {
        return forecast.dates()
                .map(dates -> "At " + Figures.plain(Math.round(forecast.rate() * 7 / 6) / 10.0)
                        + " hours a week, as so far: " + SessionWords.day(dates.middle()) + "; between "
                        + SessionWords.day(dates.early()) + " and " + SessionWords.day(dates.late()) + ".")
                .orElse("");
    }

    /** Minutes in the book against the file's for the same work; empty when nothing was timed. */
    public String slippage() {
        return forecast.soFar() == 0 || forecast.nominalSoFar() == 0
                ? ""
                : "So far " + SessionWords.minutes(forecast.soFar()) + " for what the file gives "
                        + SessionWords.minutes(forecast.nominalSoFar()) + ".";
    }
}
