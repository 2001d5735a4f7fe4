package gudgeon.app.cli;

import gudgeon.app.document.MeasureFigures;
import gudgeon.app.format.Amount;
import gudgeon.app.format.QuantityKind;
import gudgeon.core.measuring.Conditions;
import gudgeon.core.measuring.DecisionRule;
import gudgeon.core.measuring.Expanding;
import gudgeon.core.measuring.Instrument;
import gudgeon.core.measuring.InstrumentKind;
import gudgeon.core.measuring.Material;
import gudgeon.core.measuring.Reading;
import gudgeon.core.measuring.Repeatability;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** With what something was measured, how warm it was, by which rule it is judged: the same for every command that measures. */
final class MeasureOptions {
    @Spec(Spec.Target.MIXEE)
    @SuppressWarnings("NullAway.Init") // set by the command line before the command runs
    private CommandSpec spec;

    @Option(
            names = "--with",
            paramLabel = "INSTRUMENT",
            defaultValue = "",
            description =
                    "micrometer, digital micrometer, bore gauge, telescopic gauge, caliper, dial, lever dial, depth gauge:"
                            + " typical figures of such an instrument.")
    private String instrument = "";

    @Option(names = "--resolution", paramLabel = "LENGTH", defaultValue = "", description = "The last figure it shows.")
    private String resolution = "";

    @Option(
            names = "--may-err",
            paramLabel = "LENGTH",
            defaultValue = "",
            description = "Its maximum permissible error.")
    private String mayErr = "";

    @Option(
            names = "--offset",
            paramLabel = "LENGTH",
            defaultValue = "",
            description = "What it showed too much at its last check; taken off.")
    private String offset = "";

    @Option(
            names = "--repeatability",
            paramLabel = "LENGTH",
            defaultValue = "",
            description = "Standard deviation of your repeats, as tried out before.")
    private String repeatability = "";

    @Option(
            names = "--of",
            paramLabel = "MATERIAL",
            defaultValue = "",
            description = "Of the wall measured: cast iron, aluminium ...")
    private String material = "";

    @Option(names = "--at", paramLabel = "TEMPERATURE", defaultValue = "", description = "How warm the part was.")
    private String at = "";

    @Option(
            names = "--standard-at",
            paramLabel = "TEMPERATURE",
            defaultValue = "",
            description = "How warm the instrument's setting standard was. Default: as the part.")
    private String standardAt = "";

    @Option(
            names = "--edition",
            paramLabel = "YEAR",
            defaultValue = "2017",
            description = "Of ISO 14253-1: 2017 (95 percent sure) or 1998 (guard band U). Default: ${DEFAULT-VALUE}.")
    private int edition = 2017;

    @Option(
            names = "--units",
            paramLabel = "UNITS",
            defaultValue = "metric",
            description = "metric or inch, for showing. Default: ${DEFAULT-VALUE}.")
    private String units = "metric";

    @Option(names = "--budget", description = "Show what makes up each uncertainty.")
    private boolean budget;

    @Option(names = "--json", description = "Answer as JSON (docs/json.md), and print nothing else.")
    private boolean json;

    boolean json() {
        return json;
    }

    boolean budget() {
        return budget;
    }

    /** How values are shown. */
    MeasureFigures figures() {
        return switch (units) {
            case "metric" -> new MeasureFigures(false);
            case "inch" -> new MeasureFigures(true);
            default -> throw wrong("--units is metric or inch, not " + units);
        };
    }

    DecisionRule rule() {
        return switch (edition) {
            case 2017 -> DecisionRule.PROBABILITY_2017;
            case 1998 -> DecisionRule.GUARD_BAND_1998;
            default -> throw wrong("--edition is 2017 or 1998, not " + edition);
        };
    }

    /** The instrument: typical figures of its kind, overruled by those given. */
    Instrument instrument(InstrumentKind otherwise) {
        InstrumentKind kind = instrument.isBlank()
                ? otherwise
                : InstrumentKind.find(instrument)
                        .orElseThrow(() ->
                                wrong("no instrument is called '" + instrument + "'. Maybe one of: " + kinds() + "?"));
        Instrument typical = kind.typical();
        return build(() -> new Instrument(
                typical.id(),
                length("--resolution", resolution).orElse(typical.resolution_mm()),
                length("--may-err", mayErr).orElse(typical.maximumError_mm()),
                typical.range_mm(),
                typical.standard(),
                length("--offset", offset).map(off -> new Instrument.Check(off, 0))));
    }

    Repeatability repeatability(Instrument with) {
        return length("--repeatability", repeatability)
                .map(deviation -> build(() -> new Repeatability(deviation, 10, false)))
                .orElseGet(() -> Repeatability.assumed(with));
    }

    Conditions conditions() {
        Expanding part = material.isBlank()
                ? Expanding.unknown()
                : Material.find(material)
                        .map(Expanding::of)
                        .orElseThrow(() -> wrong("no material is called '" + material + "'. Maybe one of: "
                                + Arrays.stream(Material.values())
                                        .map(one -> one.name()
                                                .toLowerCase(Locale.ROOT)
                                                .replace('_', ' '))
                                        .collect(Collectors.joining(", "))
                                + "?"));
        if (at.isBlank()) {
            return Conditions.unknown(part);
        }
        double part_C = quantity("--at", at, QuantityKind.TEMPERATURE);
        double standard_C =
                standardAt.isBlank() ? part_C : quantity("--standard-at", standardAt, QuantityKind.TEMPERATURE);
        return build(() -> new Conditions(part_C, standard_C, 1, 1, part));
    }

    /** A reading of some figures at a place. */
    Reading.Worth read(String place, List<Double> shown_mm, InstrumentKind otherwise) {
        Instrument with = instrument(otherwise);
        return build(() -> new Reading(place, shown_mm, with, conditions()).worth(repeatability(with)));
    }

    /** A length of an option; empty when it was not given. */
    Optional<Double> length(String option, String text) {
        return text.isBlank() ? Optional.empty() : Optional.of(quantity(option, text, QuantityKind.LENGTH));
    }

    /** A quantity, in the unit that its kind is held in. */
    double quantity(String option, String text, QuantityKind kind) {
        try {
            return Amount.parse(text, kind, Locale.getDefault(Locale.Category.FORMAT))
                    .value();
        } catch (IllegalArgumentException e) {
            throw wrong(option + ": " + e.getMessage());
        }
    }

    /** What core refuses is wrong usage here. */
    <T> T build(java.util.function.Supplier<T> made) {
        try {
            return made.get();
        } catch (IllegalArgumentException e) {
            throw wrong(String.valueOf(e.getMessage()));
        }
    }

    ParameterException wrong(String message) {
        return new ParameterException(spec.commandLine(), message);
    }

    private static String kinds() {
        return Arrays.stream(InstrumentKind.values()).map(InstrumentKind::word).collect(Collectors.joining(", "));
    }
}
