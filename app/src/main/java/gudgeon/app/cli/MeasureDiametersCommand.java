package gudgeon.app.cli;

import gudgeon.app.format.QuantityKind;
import gudgeon.core.measuring.Derived;
import gudgeon.core.measuring.Estimate;
import gudgeon.core.measuring.InstrumentKind;
import gudgeon.core.measuring.Judging;
import gudgeon.core.measuring.Reading;
import gudgeon.core.measuring.Rework;
import gudgeon.core.measuring.Sheets;
import gudgeon.core.measuring.SizeReading;
import gudgeon.core.measuring.SizeSurvey;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Bores or journals from a table of diameters. */
@Command(
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "FILE is a table with the headings: name, depth mm, direction, size mm (see docs/measuring.md).",
            "A place that stands several times is a repeat. Traits for limits: size, taper, out-of-round, wear."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done, whatever the verdict",
            "2:Wrong usage, or the table has a fault",
            "4:The file cannot be read"
        })
final class MeasureDiametersCommand implements Callable<Integer> {
    private final Screen screen;
    private final boolean bore;

    @Mixin
    private MeasureOptions options = new MeasureOptions();

    @Mixin
    private MeasureLimits limits = new MeasureLimits();

    @Parameters(index = "0", paramLabel = "FILE", description = "The table.")
    private String file = "";

    @Option(
            names = "--unworn",
            paramLabel = "SIZE",
            defaultValue = "",
            description = "Its size where it does not wear, or when new.")
    private String unworn = "";

    @Option(
            names = "--nominal",
            paramLabel = "SIZE",
            defaultValue = "",
            description = "The standard size; needed for --steps.")
    private String nominal = "";

    @Option(
            names = "--steps",
            paramLabel = "SIZES",
            split = ",",
            description = "Over- or undersizes on offer: 0.25mm,0.50mm.")
    private List<String> steps = new ArrayList<>();

    @Option(
            names = "--allowance",
            paramLabel = "LENGTH",
            defaultValue = "0.03mm",
            description = "What finishing takes off, in diameter. Default: ${DEFAULT-VALUE}.")
    private String allowance = "0.03mm";

    @Option(
            names = "--worn-centre",
            description = "Cut about the worn centre, not the old one: one-sided wear counts once.")
    private boolean wornCentre;

    @Option(
            names = "--not-below",
            paramLabel = "SIZE",
            defaultValue = "",
            description = "Smallest size a journal may be ground to.")
    private String notBelow = "";

    /** What was asked. */
    private record Request(List<Reading> readings, Judging judging, Optional<Sheets.CutTo> cut) {}

    private MeasureDiametersCommand(Screen screen, boolean bore) {
        this.screen = screen;
        this.bore = bore;
    }

    static CommandLine line(Screen screen, boolean bore) {
        CommandLine line = new CommandLine(new MeasureDiametersCommand(screen, bore));
        line.getCommandSpec()
                .name(bore ? "bore" : "journal")
                .usageMessage()
                .header(
                        bore
                                ? "Bores: size, taper, out-of-round, wear, and the common oversize that cleans all of them."
                                : "Journals: size, taper, out-of-round, wear, and the common undersize.")
                .footer(
                        "",
                        bore
                                ? "Example: gudgeon measure bore bores.csv --nominal 86mm --unworn 86.010mm --steps 0.25mm,0.50mm"
                                : "Example: gudgeon measure journal pins.csv --least size=49.950mm --most out-of-round=0.010mm");
        return line;
    }

    @Override
    public Integer call() {
        List<Sheets.Round> rounds = rounds(MeasureFile.read(file, options));
        Derived.Trait size = bore ? Derived.Trait.LARGEST : Derived.Trait.SMALLEST;
        Judging judging = limits.judging(
                options, List.of(size, Derived.Trait.TAPER, Derived.Trait.OUT_OF_ROUND, Derived.Trait.WEAR));
        Optional<Sheets.CutTo> cut = cut();
        List<Reading> readings = rounds.stream()
                .flatMap(round -> round.survey().readings().stream())
                .map(reading -> reading.worth().reading())
                .toList();
        String of = bore ? "bores" : "journals";
        return new MeasureText(screen, options)
                .print(
                        new Request(readings, judging, cut),
                        options.build(() -> bore
                                ? Sheets.bores(of, rounds, judging, cut)
                                : Sheets.journals(of, rounds, judging, cut)));
    }

    private Optional<Sheets.CutTo> cut() {
        if (steps.isEmpty()) {
            return Optional.empty();
        }
        double nominal_mm = options.length("--nominal", nominal)
                .orElseThrow(() -> options.wrong("--steps are counted from the standard size: give --nominal"));
        List<Double> steps_mm = steps.stream()
                .map(step -> options.quantity("--steps", step, QuantityKind.LENGTH))
                .toList();
        return Optional.of(new Sheets.CutTo(
                nominal_mm,
                steps_mm,
                options.quantity("--allowance", allowance, QuantityKind.LENGTH),
                wornCentre ? Rework.Centring.WORN_CENTRE : Rework.Centring.OLD_CENTRE,
                options.length("--not-below", notBelow).orElse(0.0)));
    }

    private List<Sheets.Round> rounds(MeasureFile table) {
        Map<String, Map<Place, List<Double>>> shown = new LinkedHashMap<>();
        for (int row = 0; row < table.size(); row++) {
            String name = table.has("name") ? table.text(row, "name") : bore ? "bore" : "journal";
            double depth = table.has("depth") ? table.length(row, "depth") : 0;
            Place place = new Place(depth, table.text(row, "direction"));
            shown.computeIfAbsent(name, key -> new LinkedHashMap<>())
                    .computeIfAbsent(place, key -> new ArrayList<>())
                    .add(table.length(row, "size"));
        }
        Optional<Estimate> whenNew = options.length("--unworn", unworn).map(Estimate::exactly);
        List<Sheets.Round> rounds = new ArrayList<>();
        shown.forEach((name, places) -> rounds.add(new Sheets.Round(name, survey(name, places), whenNew)));
        return rounds;
    }

    private record Place(double depth_mm, String direction) {}

    private SizeSurvey survey(String name, Map<Place, List<Double>> places) {
        List<SizeReading> readings = new ArrayList<>();
        places.forEach((place, sizes) -> {
            String where = name + " at " + gudgeon.app.document.Figures.plain(place.depth_mm()) + " mm"
                    + (place.direction().isEmpty() ? "" : " " + place.direction());
            readings.add(new SizeReading(
                    place.depth_mm(),
                    place.direction(),
                    options.read(where, sizes, bore ? InstrumentKind.BORE_GAUGE : InstrumentKind.MICROMETER)));
        });
        return options.build(() -> new SizeSurvey(readings));
    }
}
