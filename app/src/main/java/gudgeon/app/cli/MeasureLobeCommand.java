package gudgeon.app.cli;

import gudgeon.app.format.QuantityKind;
import gudgeon.core.measuring.CamLobe;
import gudgeon.core.measuring.Derived;
import gudgeon.core.measuring.DialDifference;
import gudgeon.core.measuring.Instrument;
import gudgeon.core.measuring.InstrumentKind;
import gudgeon.core.measuring.Judged;
import gudgeon.core.measuring.Judging;
import gudgeon.core.measuring.Repeatability;
import gudgeon.core.measuring.Sheet;
import gudgeon.core.measuring.Turn;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A cam lobe from follower readings. */
@Command(
        name = "lobe",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "A cam lobe: lift, run-out of the base circle, duration and centre at a lift.",
        description = "FILE is a table with the headings: angle deg, height mm.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done, whatever the verdict",
            "2:Wrong usage, or the table has a fault",
            "4:The file cannot be read"
        },
        footer = {
            "",
            "Example: gudgeon measure lobe lobe.csv --base-from 230deg --base-to 350deg --least lift=8.60mm --at-lift 1mm"
        })
final class MeasureLobeCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private MeasureOptions options = new MeasureOptions();

    @Mixin
    private MeasureLimits limits = new MeasureLimits();

    @Parameters(index = "0", paramLabel = "FILE", description = "The table.")
    private String file = "";

    @Option(names = "--base-from", required = true, paramLabel = "ANGLE", description = "Where the base circle begins.")
    private String from = "";

    @Option(names = "--base-to", required = true, paramLabel = "ANGLE", description = "Where it ends.")
    private String to = "";

    @Option(
            names = "--at-lift",
            paramLabel = "LIFT",
            defaultValue = "1mm",
            description = "For duration and centre. Default: ${DEFAULT-VALUE}.")
    private String lift = "1mm";

    /** What was asked, and duration and centre in degrees of the cam. */
    private record Request(
            Instrument dial, Judging judging, CamLobe lobe, OptionalDouble duration_deg, OptionalDouble centre_deg) {}

    MeasureLobeCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        MeasureFile table = MeasureFile.read(file, options);
        List<Turn.Dial> dials = new ArrayList<>();
        for (int row = 0; row < table.size(); row++) {
            dials.add(new Turn.Dial(table.angle(row, "angle"), table.length(row, "height")));
        }
        CamLobe lobe = options.build(() -> CamLobe.of(
                dials,
                options.quantity("--base-from", from, QuantityKind.ANGLE),
                options.quantity("--base-to", to, QuantityKind.ANGLE)));
        Instrument dial = options.instrument(InstrumentKind.DIAL);
        Repeatability repeats = options.repeatability(dial);
        Judging judging = limits.judging(options, List.of(Derived.Trait.LIFT, Derived.Trait.RUN_OUT));
        OptionalDouble error = OptionalDouble.of(dial.maximumError_mm());
        List<Judged> judged = new ArrayList<>();
        judged.addAll(judging.of(
                "lobe", DialDifference.of(Derived.Trait.LIFT, lobe.lift_mm(), dial, repeats, "lobe"), 1, error));
        judged.addAll(judging.of(
                "base circle",
                DialDifference.of(Derived.Trait.RUN_OUT, lobe.baseRunOut_mm(), dial, repeats, "base circle"),
                1,
                error));
        double at = options.quantity("--at-lift", lift, QuantityKind.LENGTH);
        OptionalDouble duration = lobe.duration_deg(at);
        OptionalDouble centre = lobe.centre_deg(at);
        int done = new MeasureText(screen, options)
                .print(new Request(dial, judging, lobe, duration, centre), new Sheet("lobe", judged, List.of()));
        if (!options.json()) {
            Layout layout = new Layout(screen);
            duration.ifPresentOrElse(
                    degrees -> layout.line("  lifted by " + options.figures().length(at) + " for " + Math.round(degrees)
                            + "° of the cam, centre at " + Math.round(centre.orElse(Double.NaN)) + "°"),
                    () -> layout.line("  never lifted by " + options.figures().length(at)));
        }
        return done;
    }
}
