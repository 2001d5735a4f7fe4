package gudgeon.app.cli;

import gudgeon.app.format.QuantityKind;
import gudgeon.core.measuring.Derived;
import gudgeon.core.measuring.Estimate;
import gudgeon.core.measuring.InstrumentKind;
import gudgeon.core.measuring.Judged;
import gudgeon.core.measuring.Judging;
import gudgeon.core.measuring.Reading;
import gudgeon.core.measuring.Sheet;
import gudgeon.core.measuring.Sheets;
import gudgeon.core.measuring.Spring;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A coil spring. */
@Command(
        name = "spring",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "A coil spring: free length, rate, load at its fitted length, how far it leans.",
        description = "Traits for limits: height (free length), load, rate is told without one, squareness.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:Done, whatever the verdict", "2:Wrong usage"},
        footer = {
            "",
            "Example: gudgeon measure spring --free 45.2mm --press 36mm=212N --press 27mm=389N --fitted 33mm --least height=44.5mm"
        })
final class MeasureSpringCommand implements Callable<Integer> {
    private static final double BALANCE_DOUBT = 0.01;

    private final Screen screen;

    @Mixin
    private MeasureOptions options = new MeasureOptions();

    @Mixin
    private MeasureLimits limits = new MeasureLimits();

    @Option(
            names = "--free",
            required = true,
            paramLabel = "LENGTH",
            description = "Length without load; again for repeats.")
    private List<String> free = new ArrayList<>();

    @Option(
            names = "--press",
            paramLabel = "LENGTH=FORCE",
            description = "Length and the force that holds it; two or more.")
    private List<String> press = new ArrayList<>();

    @Option(
            names = "--fitted",
            paramLabel = "LENGTH",
            defaultValue = "",
            description = "Its length in place, for the load there.")
    private String fitted = "";

    @Option(
            names = "--leans",
            paramLabel = "LENGTH",
            defaultValue = "",
            description = "How far its top stands off a square.")
    private String leans = "";

    /** What was asked. */
    private record Request(Reading free, List<Spring.Pressed> pressed, Judging judging) {}

    MeasureSpringCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        Judging judging =
                limits.judging(options, List.of(Derived.Trait.HEIGHT, Derived.Trait.LOAD, Derived.Trait.SQUARENESS));
        Reading.Worth length = options.read(
                "free length",
                free.stream()
                        .map(text -> options.quantity("--free", text, QuantityKind.LENGTH))
                        .toList(),
                InstrumentKind.CALIPER);
        Sheet first = Sheets.reading("spring", Derived.Trait.HEIGHT, length, judging);
        List<Judged> judged = new ArrayList<>(first.judged());
        List<Spring.Pressed> pressed = press.stream().map(this::pressed).toList();
        if (!pressed.isEmpty()) {
            Spring spring = options.build(() -> Spring.of(length.estimate().value(), pressed));
            judged.addAll(
                    judging.of("spring", plain(Derived.Trait.RATE, spring.rate_N_per_mm()), 1, OptionalDouble.empty()));
            options.length("--fitted", fitted)
                    .ifPresent(at -> judged.addAll(judging.of("spring", load(spring, at), 1, OptionalDouble.empty())));
        }
        options.length("--leans", leans)
                .ifPresent(lean -> judged.addAll(judging.of(
                        "spring",
                        plain(
                                Derived.Trait.SQUARENESS,
                                options.build(() ->
                                        Spring.lean_deg(lean, length.estimate().value()))),
                        1,
                        OptionalDouble.empty())));
        return new MeasureText(screen, options)
                .print(new Request(length.reading(), pressed, judging), new Sheet("spring", judged, first.remarks()));
    }

    /** A home balance is trusted to a per cent. */
    private static Derived load(Spring spring, double at_mm) {
        double load = spring.load_N(at_mm);
        Estimate estimate = Estimate.exactly(load)
                .with(gudgeon.core.measuring.Contribution.within(
                        gudgeon.core.measuring.Source.of("the balance, a per cent"),
                        gudgeon.core.measuring.Spread.RECTANGULAR,
                        Math.abs(load) * BALANCE_DOUBT,
                        1))
                .with(gudgeon.core.measuring.Contribution.of(
                        gudgeon.core.measuring.Source.of("loads about their line"),
                        spring.rest_N(),
                        1,
                        Double.POSITIVE_INFINITY));
        return new Derived(Derived.Trait.LOAD, estimate, List.of());
    }

    private static Derived plain(Derived.Trait trait, double value) {
        return new Derived(trait, Estimate.exactly(value), List.of());
    }

    private Spring.Pressed pressed(String text) {
        int equals = text.indexOf('=');
        if (equals < 0) {
            throw options.wrong("--press is a length and its force, as 36mm=212N, not " + text);
        }
        return options.build(() -> new Spring.Pressed(
                options.quantity("--press", text.substring(0, equals), QuantityKind.LENGTH),
                options.quantity("--press", text.substring(equals + 1), QuantityKind.FORCE)));
    }
}
