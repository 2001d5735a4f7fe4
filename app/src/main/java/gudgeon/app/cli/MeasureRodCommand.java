package gudgeon.app.cli;

import gudgeon.app.format.QuantityKind;
import gudgeon.core.measuring.Contribution;
import gudgeon.core.measuring.Derived;
import gudgeon.core.measuring.DialDifference;
import gudgeon.core.measuring.Estimate;
import gudgeon.core.measuring.Instrument;
import gudgeon.core.measuring.InstrumentKind;
import gudgeon.core.measuring.Judged;
import gudgeon.core.measuring.Judging;
import gudgeon.core.measuring.Repeatability;
import gudgeon.core.measuring.RodLine;
import gudgeon.core.measuring.Sheet;
import gudgeon.core.measuring.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Whether a connecting rod is straight. */
@Command(
        name = "rod",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "A connecting rod on mandrels: bend and twist over 100 mm.",
        description = "Traits for limits: bend, twist; a limit of 0.03mm means over 100 mm, either way.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:Done, whatever the verdict", "2:Wrong usage"},
        footer = {
            "",
            "Example: gudgeon measure rod --apart 150mm --upright 0mm,0.03mm --lying 0.10mm,0.07mm --most bend=0.03mm"
        })
final class MeasureRodCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private MeasureOptions options = new MeasureOptions();

    @Mixin
    private MeasureLimits limits = new MeasureLimits();

    @Option(
            names = "--apart",
            required = true,
            paramLabel = "LENGTH",
            description = "Distance of the two places on the mandrel.")
    private String apart = "";

    @Option(
            names = "--upright",
            required = true,
            split = ",",
            paramLabel = "LEFT,RIGHT",
            description = "Heights with the rod upright, for bend.")
    private List<String> upright = new ArrayList<>();

    @Option(
            names = "--lying",
            required = true,
            split = ",",
            paramLabel = "LEFT,RIGHT",
            description = "Heights with the rod lying, for twist.")
    private List<String> lying = new ArrayList<>();

    /** What was asked, and bend and twist with their signs. */
    private record Request(
            Instrument dial, Repeatability repeatability, double apart_mm, Judging judging, RodLine rod) {}

    MeasureRodCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        if (upright.size() != 2 || lying.size() != 2) {
            throw options.wrong("--upright and --lying are two heights each, as 0mm,0.03mm");
        }
        double apart_mm = options.quantity("--apart", apart, QuantityKind.LENGTH);
        RodLine rod = options.build(
                () -> RodLine.of(apart_mm, height(upright, 0), height(upright, 1), height(lying, 0), height(lying, 1)));
        Instrument dial = options.instrument(InstrumentKind.LEVER_DIAL);
        Repeatability repeats = options.repeatability(dial);
        Judging judging = limits.judging(options, List.of(Derived.Trait.BEND, Derived.Trait.TWIST));
        double each = 100 / apart_mm * Math.sqrt(2) * DialDifference.heightUncertainty_mm(dial, repeats);
        List<Judged> judged = new ArrayList<>();
        judged.addAll(judging.of("rod", of(Derived.Trait.BEND, rod.bend_per100mm(), each), 1, OptionalDouble.empty()));
        judged.addAll(
                judging.of("rod", of(Derived.Trait.TWIST, rod.twist_per100mm(), each), 1, OptionalDouble.empty()));
        return new MeasureText(screen, options)
                .print(new Request(dial, repeats, apart_mm, judging, rod), new Sheet("rod", judged, List.of()));
    }

    private double height(List<String> texts, int index) {
        return options.quantity("height", texts.get(index), QuantityKind.LENGTH);
    }

    private static Derived of(Derived.Trait trait, double value, double uncertainty) {
        return new Derived(
                trait,
                Estimate.exactly(Math.abs(value))
                        .with(Contribution.of(
                                Source.of("two heights of the dial"), uncertainty, 1, Double.POSITIVE_INFINITY)),
                List.of());
    }
}
