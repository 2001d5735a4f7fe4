package gudgeon.app.cli;

import gudgeon.app.format.QuantityKind;
import gudgeon.core.measuring.Derived;
import gudgeon.core.measuring.DialDifference;
import gudgeon.core.measuring.Instrument;
import gudgeon.core.measuring.InstrumentKind;
import gudgeon.core.measuring.Judged;
import gudgeon.core.measuring.Judging;
import gudgeon.core.measuring.Repeatability;
import gudgeon.core.measuring.Seat;
import gudgeon.core.measuring.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A valve's seat. */
@Command(
        name = "seat",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "A valve's seat: narrowest and widest contact, and where on the valve's face it lies.",
        description =
                "Traits for limits: smallest and largest (widths), position (distance from the middle of the face).",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:Done, whatever the verdict", "2:Wrong usage"},
        footer = {
            "",
            "Example: gudgeon measure seat 1.3mm 1.5mm 1.4mm 1.6mm --outside 0.4mm --inside 0.8mm --most largest=1.8mm"
        })
final class MeasureSeatCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private MeasureOptions options = new MeasureOptions();

    @Mixin
    private MeasureLimits limits = new MeasureLimits();

    @Parameters(arity = "1..*", paramLabel = "WIDTH", description = "Widths round about.")
    private List<String> widths = new ArrayList<>();

    @Option(
            names = "--outside",
            paramLabel = "LENGTH",
            defaultValue = "0mm",
            description = "Bare face outside the contact.")
    private String outside = "0mm";

    @Option(names = "--inside", paramLabel = "LENGTH", defaultValue = "0mm", description = "Bare face inside it.")
    private String inside = "0mm";

    /** What was asked. */
    private record Request(
            Instrument instrument, Repeatability repeatability, List<Double> widths_mm, Judging judging) {}

    MeasureSeatCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        List<Double> widths_mm = widths.stream()
                .map(text -> options.quantity("width", text, QuantityKind.LENGTH))
                .toList();
        Seat seat = options.build(() -> Seat.of(
                widths_mm,
                options.quantity("--outside", outside, QuantityKind.LENGTH),
                options.quantity("--inside", inside, QuantityKind.LENGTH)));
        Instrument caliper = options.instrument(InstrumentKind.CALIPER);
        Repeatability repeats = options.repeatability(caliper);
        Judging judging =
                limits.judging(options, List.of(Derived.Trait.SMALLEST, Derived.Trait.LARGEST, Derived.Trait.POSITION));
        List<Judged> judged = new ArrayList<>();
        add(judged, judging, caliper, repeats, Derived.Trait.SMALLEST, seat.narrowest_mm());
        add(judged, judging, caliper, repeats, Derived.Trait.LARGEST, seat.widest_mm());
        add(judged, judging, caliper, repeats, Derived.Trait.POSITION, Math.abs(seat.offMiddle_mm()));
        int done = new MeasureText(screen, options)
                .print(new Request(caliper, repeats, widths_mm, judging), new Sheet("seat", judged, List.of()));
        if (!options.json() && seat.offMiddle_mm() != 0) {
            new Layout(screen)
                    .line("  the contact lies " + (seat.offMiddle_mm() > 0 ? "outside" : "inside")
                            + " the middle of the valve's face");
        }
        return done;
    }

    private static void add(
            List<Judged> judged,
            Judging judging,
            Instrument with,
            Repeatability repeats,
            Derived.Trait trait,
            double value_mm) {
        judged.addAll(judging.of(
                "seat",
                DialDifference.of(trait, value_mm, with, repeats, "seat"),
                1,
                OptionalDouble.of(with.maximumError_mm())));
    }
}
