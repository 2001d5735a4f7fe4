package gudgeon.app.cli;

import gudgeon.app.format.QuantityKind;
import gudgeon.core.measuring.Clearances;
import gudgeon.core.measuring.Derived;
import gudgeon.core.measuring.InstrumentKind;
import gudgeon.core.measuring.Judging;
import gudgeon.core.measuring.Reading;
import gudgeon.core.measuring.Remark;
import gudgeon.core.measuring.Rework;
import gudgeon.core.measuring.Sheet;
import gudgeon.core.measuring.Sheets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What a bore leaves round a shaft. */
@Command(
        name = "clearance",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header = "What a bore leaves round a shaft: by difference, by a crushed thread, or both and compared.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:Done, whatever the verdict", "2:Wrong usage"},
        footer = {
            "",
            "Example: gudgeon measure clearance --bore 60.041mm --shaft 59.992mm --strip 0.051mm --least 0.025mm --most 0.070mm"
        })
final class MeasureClearanceCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private MeasureOptions options = new MeasureOptions();

    @Mixin
    private MeasureLimits limits = new MeasureLimits();

    @Option(names = "--bore", paramLabel = "SIZE", description = "The smallest size of the bore; again for repeats.")
    private List<String> bore = new ArrayList<>();

    @Option(names = "--shaft", paramLabel = "SIZE", description = "The largest size of the shaft; again for repeats.")
    private List<String> shaft = new ArrayList<>();

    @Option(
            names = "--strip",
            paramLabel = "CLEARANCE",
            description =
                    "What the printed strip says beside the crushed thread: its narrowest and widest place, or one for both.")
    private List<String> strip = new ArrayList<>();

    @Option(
            names = "--strip-step",
            paramLabel = "LENGTH",
            defaultValue = "0.013mm",
            description = "From one mark of the strip to the next. Default: ${DEFAULT-VALUE}.")
    private String step = "0.013mm";

    @Option(
            names = "--hone",
            description = "Take --shaft as a piston, and say what to hone its bore to for --least and --most.")
    private boolean hone;

    /** What was asked. */
    private record Request(List<Reading> readings, List<Double> strip_mm, Judging judging) {}

    MeasureClearanceCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        Judging judging = limits.judging(options, List.of(Derived.Trait.CLEARANCE));
        List<Double> strip_mm = lengths("--strip", strip);
        if (hone) {
            return honeTo(judging);
        }
        if (bore.isEmpty() != shaft.isEmpty() || (bore.isEmpty() && strip_mm.isEmpty())) {
            throw options.wrong("a clearance needs --bore and --shaft, or --strip, or all three");
        }
        List<Reading.Worth> read = bore.isEmpty() ? List.of() : List.of(read("bore", bore), read("shaft", shaft));
        Optional<Derived> difference = read.isEmpty()
                ? Optional.empty()
                : Optional.of(Clearances.between(size(read.getFirst()), size(read.getLast())));
        Optional<Derived> byStrip = strip_mm.isEmpty()
                ? Optional.empty()
                : Optional.of(options.build(() -> Clearances.byStrip(
                        "the thread",
                        strip_mm.stream().min(Double::compare).orElseThrow(),
                        strip_mm.stream().max(Double::compare).orElseThrow(),
                        options.quantity("--strip-step", step, QuantityKind.LENGTH))));
        Request request = new Request(read.stream().map(Reading.Worth::reading).toList(), strip_mm, judging);
        return new MeasureText(screen, options)
                .print(request, Sheets.clearance("clearance", difference, byStrip, read, judging));
    }

    private int honeTo(Judging judging) {
        if (shaft.isEmpty() || judging.limits().isEmpty()) {
            throw options.wrong(
                    "--hone needs --shaft with the piston's size, --least and --most with the clearance wanted");
        }
        var wanted = judging.limits().getFirst().limits();
        if (wanted.lower().isEmpty() || wanted.upper().isEmpty()) {
            throw options.wrong("--hone needs both --least and --most");
        }
        Reading.Worth piston = read("piston", shaft);
        Remark.HoneTo to = new Remark.HoneTo(
                "the piston",
                Rework.honeTo(
                        size(piston),
                        wanted.lower().getAsDouble(),
                        wanted.upper().getAsDouble()));
        List<Remark> remarks = new ArrayList<>(Sheets.remarksOn(List.of(piston)));
        remarks.add(to);
        Sheet sheet = new Sheet(
                "piston",
                List.of(new gudgeon.core.measuring.Judged("piston", size(piston), Optional.empty())),
                remarks);
        return new MeasureText(screen, options)
                .print(new Request(List.of(piston.reading()), List.of(), judging), sheet);
    }

    private Reading.Worth read(String place, List<String> texts) {
        return options.read(place, lengths("--" + place, texts), InstrumentKind.MICROMETER);
    }

    private static Derived size(Reading.Worth worth) {
        return new Derived(Derived.Trait.SIZE, worth.estimate(), List.of(worth.place()));
    }

    private List<Double> lengths(String option, List<String> texts) {
        return texts.stream()
                .map(text -> options.quantity(option, text, QuantityKind.LENGTH))
                .toList();
    }
}
