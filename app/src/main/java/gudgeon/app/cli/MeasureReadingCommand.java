package gudgeon.app.cli;

import gudgeon.app.format.QuantityKind;
import gudgeon.core.measuring.Derived;
import gudgeon.core.measuring.InstrumentKind;
import gudgeon.core.measuring.Judging;
import gudgeon.core.measuring.Reading;
import gudgeon.core.measuring.Sheets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** One size. */
@Command(
        name = "reading",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "One size, read once or several times: what it is at 20 °C, how sure, and within its limit or not.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:Done, whatever the verdict", "2:Wrong usage"},
        footer = {
            "",
            "Example: gudgeon measure reading 86.076mm 86.078mm --with \"bore gauge\" --most 86.080mm --budget"
        })
final class MeasureReadingCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private MeasureOptions options = new MeasureOptions();

    @Mixin
    private MeasureLimits limits = new MeasureLimits();

    @Parameters(
            arity = "1..*",
            paramLabel = "READING",
            description = "What the instrument showed, with its unit; repeats of one place.")
    private List<String> readings = new ArrayList<>();

    @Option(names = "--place", paramLabel = "NAME", defaultValue = "the place", description = "Where it was read.")
    private String place = "the place";

    /** What was asked. */
    private record Request(Reading reading, Judging judging) {}

    MeasureReadingCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        List<Double> shown = readings.stream()
                .map(text -> options.quantity("reading", text, QuantityKind.LENGTH))
                .toList();
        Reading.Worth worth = options.read(place, shown, InstrumentKind.MICROMETER);
        Judging judging = limits.judging(options, List.of(Derived.Trait.SIZE));
        return new MeasureText(screen, options)
                .print(
                        new Request(worth.reading(), judging),
                        Sheets.reading(place, Derived.Trait.SIZE, worth, judging));
    }
}
