package gudgeon.app.desk;

import gudgeon.app.format.Amount;
import gudgeon.app.format.QuantityKind;
import gudgeon.core.book.Gauging;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A place of a feature was read.
 *
 * @param feature its id or name
 * @param place where; empty when the feature has one place only
 * @param shown what the instrument showed, each with its unit; a bare number is millimetres where {@code bare} says so
 * @param instrument one's own, or a common kind; empty for the usual one
 * @param part how warm the part was; may be empty
 * @param standard how warm the setting standard was; may be empty
 * @param gauges the instruments there are
 * @param bare whether a number without a unit is taken as millimetres, because the field says so
 */
public record TakeReading(
        String feature,
        String place,
        List<String> shown,
        String instrument,
        String part,
        String standard,
        Gauges gauges,
        boolean bare)
        implements Deed {
    private static final int LONGEST_PLACE = 80;

    public TakeReading {
        shown = List.copyOf(shown);
    }

    @Override
    public Telling tell(Job job) {
        NameSearch names = new NameSearch(job.engine());
        List<String> found = names.features(List.of(feature));
        if (found.isEmpty()) {
            return new Telling.Wrong(Checks.unknown("feature", names));
        }
        FeaturePlaces places = new FeaturePlaces(job.engine().features().stream()
                .filter(one -> one.id().equals(found.getFirst()))
                .findFirst()
                .orElseThrow());
        List<FieldProblem> problems = new ArrayList<>();
        String where = place.replaceAll("\\s+", " ").strip();
        if (where.isEmpty() && places.all().size() == 1 && places.which().isEmpty()) {
            where = places.all().getFirst();
        }
        if (where.isEmpty()) {
            problems.add(new FieldProblem(
                    "place",
                    FieldProblem.Kind.FILE,
                    "",
                    List.of(),
                    "where was it read? One of: " + String.join(" · ", places.all())));
        }
        if (where.length() > LONGEST_PLACE) {
            problems.add(FieldProblem.of("place", FieldProblem.Kind.TOO_LONG, Checks.shortened(where)));
        }
        String with = instrument.isBlank() ? places.usual().word() : instrument.strip();
        if (gauges.find(with).isEmpty()) {
            problems.add(new FieldProblem(
                    "instrument",
                    FieldProblem.Kind.UNKNOWN,
                    Checks.shortened(with),
                    Nearest.to(with, gauges.names()),
                    ""));
        }
        List<Double> shown_mm = new ArrayList<>();
        for (String text : shown) {
            read("shown", text, QuantityKind.LENGTH, "mm", problems).ifPresent(shown_mm::add);
        }
        if (shown.isEmpty()) {
            problems.add(FieldProblem.of("shown", FieldProblem.Kind.EMPTY, ""));
        }
        List<Double> warmth = new ArrayList<>();
        if (!part.isBlank()) {
            read("part", part, QuantityKind.TEMPERATURE, "°C", problems).ifPresent(warmth::add);
        }
        if (!standard.isBlank()) {
            read("standard", standard, QuantityKind.TEMPERATURE, "°C", problems).ifPresent(warmth::add);
        }
        if (!problems.isEmpty()) {
            return new Telling.Wrong(problems);
        }
        try {
            return Telling.facts(new Gauging.ReadingTaken(
                    places.feature().id(), where, shown_mm, String.join(" ", shown), with, warmth));
        } catch (IllegalArgumentException e) {
            return Telling.wrong(
                    new FieldProblem("shown", FieldProblem.Kind.FILE, "", List.of(), String.valueOf(e.getMessage())));
        }
    }

    private Optional<Double> read(
            String field, String text, QuantityKind kind, String unit, List<FieldProblem> problems) {
        String typed = text.strip();
        String whole = bare && typed.matches("[+-]?[0-9]*[.,]?[0-9]+") ? typed.replace(',', '.') + " " + unit : typed;
        try {
            return Optional.of(Amount.parse(whole, kind, Locale.getDefault(Locale.Category.FORMAT))
                    .value());
        } catch (IllegalArgumentException e) {
            problems.add(new FieldProblem(
                    field, FieldProblem.Kind.FILE, Checks.shortened(typed), List.of(), String.valueOf(e.getMessage())));
            return Optional.empty();
        }
    }
}
