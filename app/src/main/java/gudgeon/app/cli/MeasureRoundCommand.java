package gudgeon.app.cli;

import gudgeon.app.format.QuantityKind;
import gudgeon.core.measuring.Cylinder;
import gudgeon.core.measuring.Derived;
import gudgeon.core.measuring.DialDifference;
import gudgeon.core.measuring.Instrument;
import gudgeon.core.measuring.InstrumentKind;
import gudgeon.core.measuring.Judged;
import gudgeon.core.measuring.Judging;
import gudgeon.core.measuring.Remark;
import gudgeon.core.measuring.Repeatability;
import gudgeon.core.measuring.RoundFit;
import gudgeon.core.measuring.RoundZone;
import gudgeon.core.measuring.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Roundness and cylindricity from radii about an axis. */
@Command(
        name = "round",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header =
                "Roundness from radii read about an axis, by least squares and least zone; cylindricity over several heights.",
        description =
                "FILE is a table with the headings: angle deg, radius mm (or its departure from any radius), along mm.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done, whatever the verdict",
            "2:Wrong usage, or the table has a fault",
            "4:The file cannot be read"
        },
        footer = {"", "Example: gudgeon measure round journal.csv --nominal 30mm --most roundness=0.005mm"})
final class MeasureRoundCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private MeasureOptions options = new MeasureOptions();

    @Mixin
    private MeasureLimits limits = new MeasureLimits();

    @Parameters(index = "0", paramLabel = "FILE", description = "The table.")
    private String file = "";

    @Option(
            names = "--nominal",
            paramLabel = "RADIUS",
            defaultValue = "0mm",
            description = "Added to every radius: the nominal one when the table has departures from it.")
    private String nominal = "0mm";

    /** What was asked, and both circles at each height. */
    private record Request(
            Instrument dial,
            Repeatability repeatability,
            Judging judging,
            double nominalRadius_mm,
            List<Section> sections,
            Optional<Cylinder> cylinder) {}

    /** The circles at one height. */
    private record Section(double along_mm, RoundFit leastSquares, RoundFit leastZone) {}

    MeasureRoundCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        List<Cylinder.Polar> radii = radii(MeasureFile.read(file, options));
        double nominal_mm = options.quantity("--nominal", nominal, QuantityKind.LENGTH);
        Instrument dial = options.instrument(InstrumentKind.LEVER_DIAL);
        Repeatability repeats = options.repeatability(dial);
        Judging judging = limits.judging(options, List.of(Derived.Trait.ROUNDNESS, Derived.Trait.CYLINDRICITY));
        List<Judged> judged = new ArrayList<>();
        List<Remark> remarks = new ArrayList<>();
        List<Section> sections = new ArrayList<>();
        OptionalDouble error = OptionalDouble.of(dial.maximumError_mm());
        for (double height :
                radii.stream().map(Cylinder.Polar::height_mm).distinct().toList()) {
            RoundZone zone = options.build(() -> RoundZone.of(Cylinder.outline(radii, height, nominal_mm)));
            String where = "outline at " + options.figures().length(height);
            judged.addAll(judging.of(
                    where,
                    DialDifference.of(Derived.Trait.ROUNDNESS, zone.fit().width_mm(), dial, repeats, where),
                    1,
                    error));
            if (!zone.proven()) {
                remarks.add(new Remark.ZoneNotProven());
            }
            sections.add(new Section(
                    height, RoundFit.leastSquares(Cylinder.outline(radii, height, nominal_mm)), zone.fit()));
        }
        Optional<Cylinder> cylinder = sections.size() > 1 ? Optional.of(Cylinder.of(radii)) : Optional.empty();
        cylinder.ifPresent(one -> judged.addAll(judging.of(
                "cylinder",
                DialDifference.of(Derived.Trait.CYLINDRICITY, one.width_mm(), dial, repeats, "cylinder"),
                1,
                error)));
        return new MeasureText(screen, options)
                .print(
                        new Request(dial, repeats, judging, nominal_mm, sections, cylinder),
                        new Sheet("outline", judged, remarks));
    }

    private static List<Cylinder.Polar> radii(MeasureFile table) {
        List<Cylinder.Polar> radii = new ArrayList<>();
        for (int row = 0; row < table.size(); row++) {
            radii.add(new Cylinder.Polar(
                    table.has("along") ? table.length(row, "along") : 0,
                    table.angle(row, "angle"),
                    table.length(row, "radius")));
        }
        return radii;
    }
}
