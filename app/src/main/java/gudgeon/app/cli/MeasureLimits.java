package gudgeon.app.cli;

import gudgeon.app.document.MeasureWords;
import gudgeon.app.format.QuantityKind;
import gudgeon.core.measuring.Derived;
import gudgeon.core.measuring.Judging;
import gudgeon.core.measuring.Limits;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import picocli.CommandLine.Option;

/** What a measured trait is held against. */
final class MeasureLimits {
    @Option(
            names = "--most",
            paramLabel = "[TRAIT=]LIMIT",
            description = "At most so much: 86.080mm, or taper=0.040mm; again for more.")
    private List<String> most = new ArrayList<>();

    @Option(names = "--least", paramLabel = "[TRAIT=]LIMIT", description = "At least so much; again for more.")
    private List<String> least = new ArrayList<>();

    @Option(
            names = "--typical",
            description = "The limits are typical, not from your manual: every verdict on them is provisional.")
    private boolean typical;

    /** The limits; a bare one holds for the first trait. */
    Judging judging(MeasureOptions options, List<Derived.Trait> traits) {
        Map<Derived.Trait, double[]> bounds = new LinkedHashMap<>();
        least.forEach(text -> put(bounds, options, "--least", text, traits, 0));
        most.forEach(text -> put(bounds, options, "--most", text, traits, 1));
        boolean both = both(traits);
        List<Judging.OfTrait> limits = new ArrayList<>();
        bounds.forEach((trait, ends) -> limits.add(new Judging.OfTrait(
                trait, options.build(() -> new Limits(word(trait, both), bound(ends[0]), bound(ends[1]), !typical)))));
        return new Judging(options.rule(), limits);
    }

    private static void put(
            Map<Derived.Trait, double[]> bounds,
            MeasureOptions options,
            String option,
            String text,
            List<Derived.Trait> traits,
            int end) {
        int equals = text.indexOf('=');
        String name = equals < 0 ? "" : text.substring(0, equals).strip().toLowerCase(Locale.ROOT);
        Derived.Trait trait = traits.stream()
                .filter(one -> name.isEmpty() || names(one, both(traits)).contains(name))
                .findFirst()
                .orElseThrow(() -> options.wrong(option + ": '" + name + "' is not measured here. Maybe one of: "
                        + String.join(
                                ", ",
                                traits.stream()
                                        .map(one -> word(one, both(traits)))
                                        .toList()) + "?"));
        double[] ends = bounds.computeIfAbsent(trait, key -> new double[] {Double.NaN, Double.NaN});
        ends[end] = options.quantity(option, text.substring(equals + 1), kind(trait));
    }

    private static QuantityKind kind(Derived.Trait trait) {
        return switch (trait) {
            case LOAD -> QuantityKind.FORCE;
            case SQUARENESS -> QuantityKind.ANGLE;
            default -> QuantityKind.LENGTH;
        };
    }

    private static List<String> names(Derived.Trait trait, boolean both) {
        return List.of(
                word(trait, both),
                MeasureWords.trait(trait),
                MeasureWords.trait(trait).replace('-', ' '));
    }

    private static boolean both(List<Derived.Trait> traits) {
        return traits.contains(Derived.Trait.LARGEST) && traits.contains(Derived.Trait.SMALLEST);
    }

    /** Where only one end of a size is judged, it is the size. */
    private static String word(Derived.Trait trait, boolean both) {
        return !both && (trait == Derived.Trait.LARGEST || trait == Derived.Trait.SMALLEST)
                ? "size"
                : MeasureWords.trait(trait);
    }

    private static OptionalDouble bound(double value) {
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
