package gudgeon.app.document;

import gudgeon.core.measuring.DecisionRule;
import gudgeon.core.measuring.Derived;
import gudgeon.core.measuring.Limits;
import gudgeon.core.measuring.Source;
import gudgeon.core.measuring.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Measured traits, verdicts and budgets in words. */
public final class MeasureWords {
    private final MeasureFigures figures;

    public MeasureWords(MeasureFigures figures) {
        this.figures = figures;
    }

    /** How values are written. */
    public MeasureFigures figures() {
        return figures;
    }

    /** The name of a trait. */
    public static String trait(Derived.Trait trait) {
        return switch (trait) {
            case OUT_OF_ROUND -> "out-of-round";
            case RUN_OUT -> "run-out";
            case MEAN -> "mean";
            case SKIM -> "cut that cleans it";
            default -> trait.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        };
    }

    /** A place of a trait: points of a face have numbers only. */
    public static String place(Derived.Trait trait, String place) {
        return trait == Derived.Trait.FLATNESS || trait == Derived.Trait.SKIM ? "point " + place : place;
    }

    /** One word for an outcome. */
    public static String outcome(DecisionRule.Outcome outcome) {
        return switch (outcome) {
            case WITHIN -> "within";
            case BEYOND -> "beyond";
            case TOO_CLOSE -> "too close to call";
        };
    }

    /** The edition that was kept to. */
    public static String rule(DecisionRule rule) {
        return switch (rule) {
            case GUARD_BAND_1998 -> "ISO 14253-1:1998, guard band of the expanded uncertainty";
            case PROBABILITY_2017 -> "ISO 14253-1:2017, 95 % sure";
        };
    }

    /** "at most 86.080 mm", "between 0.250 mm and 0.900 mm". */
    public String limit(Derived.Trait trait, Limits limits) {
        if (limits.lower().isPresent() && limits.upper().isPresent()) {
            return "between " + figures.of(trait, limits.lower().getAsDouble()) + " and "
                    + figures.of(trait, limits.upper().getAsDouble());
        }
        return limits.upper().isPresent()
                ? "at most " + figures.of(trait, limits.upper().getAsDouble())
                : "at least " + figures.of(trait, limits.lower().orElse(Double.NaN));
    }

    /** The verdict as a sentence, provisional ones as such. */
    public String verdict(Derived.Trait trait, Verdict verdict) {
        String limit = verdict.limits().name() + ", " + limit(trait, verdict.limits());
        String sure = MeasureFigures.probability(verdict.conformance());
        String sentence = switch (verdict.outcome()) {
            case WITHIN -> "Within the limit (" + limit + "): conforms with " + sure + " probability.";
            case BEYOND -> "Beyond the limit (" + limit + "): conforms with " + sure + " probability.";
            case TOO_CLOSE -> "Too close to call (" + limit + "): conforms with " + sure + " probability.";
        };
        return verdict.provisional()
                ? sentence + " Provisional: the limit is typical only, confirm it from your manual."
                : sentence;
    }

    /** What would settle a verdict too close to call; empty for the others. */
    public List<String> settling(Verdict verdict) {
        return verdict.settling()
                .map(settling -> {
                    List<String> ways = new ArrayList<>();
                    settling.moreRepeats()
                            .ifPresent(more -> ways.add(
                                    more == 1
                                            ? "one more reading of the deciding place"
                                            : more + " more readings of the deciding place"));
                    settling.maximumError_mm()
                            .ifPresent(error ->
                                    ways.add("an instrument that errs by no more than " + figures.length(error)));
                    if (settling.atReference()) {
                        ways.add("part and setting standard left together until both are at 20 °C");
                    }
                    return ways.isEmpty()
                            ? List.of("Nothing on this bench settles it: the value lies too near the limit.")
                            : List.of("Would settle it, if the value stays: " + String.join("; or ", ways) + ".");
                })
                .orElse(List.of());
    }

    /** Where an error comes from. */
    public static String source(Source source) {
        String of = source.of();
        return switch (source.kind()) {
            case INPUT -> of;
            case INSTRUMENT -> "what the " + of + " may err by";
            case RESOLUTION -> "last figure read" + at(of);
            case REPEATS -> "repeats" + at(of);
            case REPEATS_ASSUMED -> "repeats (assumed)" + at(of);
            case TEMPERATURE -> "how warm both were";
            case TEMPERATURE_DIFFERENCE -> "part warmer or colder than the standard" + at(of);
            case PART_EXPANSION -> "expansion of the part (" + material(of) + ")";
            case STANDARD_EXPANSION -> "expansion of the setting standard (" + material(of) + ")";
            case FORM -> "places not read" + at(of);
            case STRIP_CHART -> "marks of the printed strip" + at(of);
            case FEELER -> "step from one feeler to the next" + at(of);
            case NEW_SIZE -> "size when new, by its tolerance";
        };
    }

    private static String at(String place) {
        return place.isEmpty() ? "" : ", " + place;
    }

    private static String material(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
