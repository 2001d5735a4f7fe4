package gudgeon.app.cli;

import gudgeon.app.format.QuantityKind;
import gudgeon.core.measuring.Clearances;
import gudgeon.core.measuring.Derived;
import gudgeon.core.measuring.InstrumentKind;
import gudgeon.core.measuring.Judged;
import gudgeon.core.measuring.Judging;
import gudgeon.core.measuring.Reading;
import gudgeon.core.measuring.Sheet;
import gudgeon.core.measuring.Sheets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A gap tried with feelers. */
@Command(
        name = "gap",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "A gap tried with feelers; for a ring, what it closes to where the bore is tightest.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:Done, whatever the verdict", "2:Wrong usage"},
        footer = {
            "",
            "Example: gudgeon measure gap --passes 0.45mm --stops 0.50mm --bore-there 86.06mm --bore-tightest 86.01mm --least 0.25mm"
        })
final class MeasureGapCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private MeasureOptions options = new MeasureOptions();

    @Mixin
    private MeasureLimits limits = new MeasureLimits();

    @Option(
            names = "--passes",
            required = true,
            paramLabel = "LENGTH",
            description = "The thickest feeler that passes; 0mm when none does.")
    private String passes = "";

    @Option(names = "--stops", required = true, paramLabel = "LENGTH", description = "The thinnest that does not.")
    private String stops = "";

    @Option(
            names = "--bore-there",
            paramLabel = "SIZE",
            defaultValue = "",
            description = "The bore at the depth where the ring was squared.")
    private String there = "";

    @Option(
            names = "--bore-tightest",
            paramLabel = "SIZE",
            defaultValue = "",
            description = "The bore where it is smallest in the ring's travel.")
    private String tightest = "";

    /** What was asked. */
    private record Request(double passes_mm, double stops_mm, List<Reading> bore, Judging judging) {}

    MeasureGapCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        double passes_mm = options.quantity("--passes", passes, QuantityKind.LENGTH);
        double stops_mm = options.quantity("--stops", stops, QuantityKind.LENGTH);
        Judging judging = limits.judging(options, List.of(Derived.Trait.GAP));
        Derived gap = options.build(() -> Clearances.byFeeler(Derived.Trait.GAP, "feelers", passes_mm, stops_mm));
        List<Judged> judged = new ArrayList<>(judging.of("gap as read", gap, 1, OptionalDouble.empty()));
        List<Reading.Worth> bore = new ArrayList<>();
        Optional<Double> there_mm = options.length("--bore-there", there);
        Optional<Double> tightest_mm = options.length("--bore-tightest", tightest);
        if (there_mm.isPresent() != tightest_mm.isPresent()) {
            throw options.wrong("--bore-there and --bore-tightest go together");
        }
        if (there_mm.isPresent() && tightest_mm.isPresent()) {
            bore.add(options.read("bore at the ring", List.of(there_mm.get()), InstrumentKind.BORE_GAUGE));
            bore.add(options.read("bore where tightest", List.of(tightest_mm.get()), InstrumentKind.BORE_GAUGE));
            Derived closed = Clearances.ringGapAt(gap, size(bore.getFirst()), size(bore.getLast()));
            judged.addAll(judging.of("gap where the bore is tightest", closed, 1, OptionalDouble.empty()));
        }
        return new MeasureText(screen, options)
                .print(
                        new Request(
                                passes_mm,
                                stops_mm,
                                bore.stream().map(Reading.Worth::reading).toList(),
                                judging),
                        new Sheet("gap", judged, Sheets.remarksOn(bore)));
    }

    private static Derived size(Reading.Worth worth) {
        return new Derived(Derived.Trait.SIZE, worth.estimate(), List.of(worth.place()));
    }
}
