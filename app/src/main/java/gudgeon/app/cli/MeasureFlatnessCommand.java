package gudgeon.app.cli;

import gudgeon.app.format.QuantityKind;
import gudgeon.core.measuring.Derived;
import gudgeon.core.measuring.FacePlane;
import gudgeon.core.measuring.FacePoint;
import gudgeon.core.measuring.FaceSurvey;
import gudgeon.core.measuring.Instrument;
import gudgeon.core.measuring.InstrumentKind;
import gudgeon.core.measuring.Judging;
import gudgeon.core.measuring.Repeatability;
import gudgeon.core.measuring.Sheet;
import gudgeon.core.measuring.Sheets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The flatness of a face from heights over a grid. */
@Command(
        name = "flatness",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header =
                "Flatness of a face: the least distance of two parallel planes that hold all points, the map, the cut.",
        description = "FILE is a table with the headings: x mm, y mm, height mm (or other units).",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done, whatever the verdict",
            "2:Wrong usage, or the table has a fault",
            "4:The file cannot be read"
        },
        footer = {"", "Example: gudgeon measure flatness deck.csv --with \"lever dial\" --most 0.05mm"})
final class MeasureFlatnessCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private MeasureOptions options = new MeasureOptions();

    @Mixin
    private MeasureLimits limits = new MeasureLimits();

    @Parameters(index = "0", paramLabel = "FILE", description = "The table.")
    private String file = "";

    @Option(
            names = "--allowance",
            paramLabel = "LENGTH",
            defaultValue = "0.02mm",
            description = "What the last cut takes off. Default: ${DEFAULT-VALUE}.")
    private String allowance = "0.02mm";

    /** What was asked, and the heights over the lower plane. */
    private record Request(
            Instrument instrument,
            Repeatability repeatability,
            double allowance_mm,
            Judging judging,
            double leastSquaresFlatness_mm,
            FacePlane zone,
            List<Height> heights) {}

    /** @param over_mm height over the lower of the two planes */
    private record Height(double x_mm, double y_mm, double over_mm) {}

    MeasureFlatnessCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        MeasureFile table = MeasureFile.read(file, options);
        List<FacePoint> points = new ArrayList<>();
        for (int row = 0; row < table.size(); row++) {
            points.add(new FacePoint(table.length(row, "x"), table.length(row, "y"), table.length(row, "height")));
        }
        Instrument dial = options.instrument(InstrumentKind.LEVER_DIAL);
        Repeatability repeats = options.repeatability(dial);
        Judging judging = limits.judging(options, List.of(Derived.Trait.FLATNESS));
        double allowance_mm = options.quantity("--allowance", allowance, QuantityKind.LENGTH);
        FaceSurvey survey = FaceSurvey.of(points);
        List<Height> heights = IntStream.range(0, points.size())
                .mapToObj(i -> new Height(points.get(i).x_mm(), points.get(i).y_mm(), survey.overLowest_mm(i)))
                .toList();
        Sheet sheet = options.build(() -> Sheets.face("face", survey, dial, repeats, allowance_mm, judging));
        int done = new MeasureText(screen, options)
                .print(
                        new Request(
                                dial, repeats, allowance_mm, judging, survey.leastSquares(), survey.zone(), heights),
                        sheet);
        if (!options.json() && !sheet.judged().isEmpty()) {
            map(survey, heights);
        }
        return done;
    }

    private void map(FaceSurvey survey, List<Height> heights) {
        Layout layout = new Layout(screen);
        var figures = options.figures();
        layout.blank();
        layout.line("  By least squares the range would be " + figures.length(survey.leastSquares()) + ".");
        layout.heading("Heights over the lower plane");
        List<Integer> high =
                survey.zone().highs().stream().map(FacePlane.Contact::point).toList();
        List<Integer> low =
                survey.zone().lows().stream().map(FacePlane.Contact::point).toList();
        for (int i = 0; i < heights.size(); i++) {
            Height one = heights.get(i);
            String mark = high.contains(i)
                    ? "   touches the upper plane"
                    : low.contains(i) ? "   touches the lower plane" : "";
            layout.line(String.format(
                    Locale.ROOT,
                    "  %4d  x %-12s y %-12s %s%s",
                    i + 1,
                    figures.length(one.x_mm()),
                    figures.length(one.y_mm()),
                    figures.length(one.over_mm()),
                    mark));
        }
    }
}
