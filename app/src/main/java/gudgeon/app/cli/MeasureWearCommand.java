package gudgeon.app.cli;

import gudgeon.app.format.QuantityKind;
import gudgeon.core.measuring.Derived;
import gudgeon.core.measuring.InstrumentKind;
import gudgeon.core.measuring.Judging;
import gudgeon.core.measuring.Reading;
import gudgeon.core.measuring.Sheets;
import gudgeon.core.measuring.TwoLimits;
import gudgeon.core.measuring.WearRate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Wear brought forward to the next opening. */
@Command(
        name = "wear",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "Wear brought forward: whether a size inside its limit today still is at the next opening.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:Done, whatever the verdict", "2:Wrong usage"},
        footer = {
            "",
            "Example: gudgeon measure wear 86.062mm --new-from 86.000mm --new-to 86.018mm --ran 5200 --further 3000 --most 86.080mm"
        })
final class MeasureWearCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private MeasureOptions options = new MeasureOptions();

    @Mixin
    private MeasureLimits limits = new MeasureLimits();

    @Parameters(arity = "1..*", paramLabel = "READING", description = "What it measures now; repeats of one place.")
    private List<String> readings = new ArrayList<>();

    @Option(names = "--new-from", required = true, paramLabel = "SIZE", description = "Smallest size when new.")
    private String from = "";

    @Option(names = "--new-to", required = true, paramLabel = "SIZE", description = "Largest size when new.")
    private String to = "";

    @Option(names = "--ran", required = true, paramLabel = "N", description = "Hours or kilometres run since new.")
    private double ran = 0;

    @Option(
            names = "--further",
            required = true,
            paramLabel = "N",
            description = "Hours or kilometres to the next opening.")
    private double further = 0;

    /** What was asked. */
    private record Request(Reading now, TwoLimits whenNew_mm, double ran, double further, Judging judging) {}

    MeasureWearCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        Reading.Worth now = options.read(
                "now",
                readings.stream()
                        .map(text -> options.quantity("reading", text, QuantityKind.LENGTH))
                        .toList(),
                InstrumentKind.MICROMETER);
        TwoLimits whenNew = options.build(() -> new TwoLimits(
                options.quantity("--new-from", from, QuantityKind.LENGTH),
                options.quantity("--new-to", to, QuantityKind.LENGTH)));
        Judging judging = limits.judging(options, List.of(Derived.Trait.SIZE));
        WearRate rate = options.build(() -> new WearRate(now.estimate(), WearRate.newWithin(whenNew), ran));
        return new MeasureText(screen, options)
                .print(
                        new Request(now.reading(), whenNew, ran, further, judging),
                        options.build(() -> Sheets.wear(
                                "size now", "size at the next opening", Derived.Trait.SIZE, rate, further, judging)));
    }
}
