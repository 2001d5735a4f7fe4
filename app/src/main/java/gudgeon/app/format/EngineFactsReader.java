package gudgeon.app.format;

import gudgeon.core.finding.EngineFacts;
import gudgeon.core.geometry.StandardAtmosphere;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Reads what must be known of an engine to judge its readings; what is not told is taken as usual, and asked for. */
final class EngineFactsReader {
    private static final double USUAL_CYLINDER = 500e-6;
    private static final double USUAL_PETROL_RATIO = 9.5;
    private static final double USUAL_DIESEL_RATIO = 18;
    private static final double USUAL_SPEED = 200;
    private static final double SEA_LEVEL_PA = 101_325;
    private static final Pattern CYLINDER = Pattern.compile("\\d+");

    private final Problems problems;
    private final List<FindingCase.Ask> asks;
    private final Map<String, String> known;

    EngineFactsReader(Problems problems, List<FindingCase.Ask> asks, Map<String, String> known) {
        this.problems = problems;
        this.asks = asks;
        this.known = known;
    }

    Optional<EngineFacts> read(Optional<Node> node, MappingNode root, List<Node> steps) {
        if (node.isEmpty() && known.isEmpty()) {
            problems.fault(root, "the case says nothing of its engine", "add engine: { fuel: petrol, cylinders: 4 }");
            return Optional.empty();
        }
        Fields fields = Fields.of(node.orElse(root), "engine", problems);
        boolean diesel = diesel(fields);
        int cylinders = cylinders(fields, steps);
        double swept = number(fields, "cc", 10, 100000)
                .stream()
                .map(cc -> cc * 1e-6)
                .findFirst()
                .orElseGet(() -> assumed("cc", USUAL_CYLINDER * cylinders, USUAL_CYLINDER * cylinders * 1e6 + " cc"));
        double usualRatio = diesel ? USUAL_DIESEL_RATIO : USUAL_PETROL_RATIO;
        double ratio = number(fields, "cr", 3, 30)
                .orElseGet(() -> assumed("compression ratio", usualRatio, Figures.plain(usualRatio)));
        double speed = number(fields, "crank_rpm", 20, 2000).orElse(USUAL_SPEED);
        double ambient = ambient(fields);
        EngineFacts.Healthy healthy = healthy(fields, ambient);
        EngineFacts.Layout layout = layout(fields, cylinders);
        if (problems.anyFault()) {
            return Optional.empty();
        }
        return Optional.of(new EngineFacts(
                diesel,
                cylinders,
                layout,
                swept,
                ratio,
                healthy,
                new EngineFacts.Cranking(speed, ambient),
                has(fields, diesel, cylinders, layout)));
    }

    private double assumed(String what, double value, String shown) {
        asks.add(new FindingCase.Ask(what, 0, shown));
        return value;
    }

    private Optional<String> text(Fields fields, String key) {
        Optional<String> written = fields.has(key) ? fields.take(key).flatMap(node -> scalar(node)) : Optional.empty();
        return written.filter(text -> !text.equals("null")).or(() -> Optional.ofNullable(known.get(key)));
    }

    private Optional<String> scalar(Node node) {
        if (node instanceof SequenceNode sequence) {
            List<String> all = new ArrayList<>();
            sequence.getValue().forEach(each -> scalar(each).ifPresent(all::add));
            return Optional.of(String.join(" ", all));
        }
        return Fields.textOf(node, problems);
    }

    private OptionalDouble number(Fields fields, String key, double least, double most) {
        Optional<String> text = text(fields, key);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        Node at = fields.take(key).orElse(fields.node());
        return Figures.within(at, text.get(), least, most, "the engine's " + key, problems);
    }

    private boolean diesel(Fields fields) {
        Optional<String> fuel = text(fields, "fuel").map(each -> each.toLowerCase(Locale.ROOT));
        if (fuel.isEmpty()) {
            asks.add(new FindingCase.Ask("fuel", 0, "petrol"));
            return false;
        }
        List<String> spark = List.of("petrol", "gasoline", "gas", "lpg", "cng", "ethanol", "paraffin", "kerosene");
        if (!fuel.get().equals("diesel") && !spark.contains(fuel.get())) {
            problems.fault(
                    fields.take("fuel").orElse(fields.node()),
                    Wording.shown(fuel.get()) + " is no fuel that is known here",
                    "petrol or diesel");
        }
        return fuel.get().equals("diesel");
    }

    private int cylinders(Fields fields, List<Node> steps) {
        OptionalDouble told = number(fields, "cylinders", 1, EngineFacts.MOST_CYLINDERS);
        if (told.isPresent()) {
            if (told.getAsDouble() != Math.rint(told.getAsDouble())) {
                problems.fault(fields.at("cylinders"), told.getAsDouble() + " cylinders", "a whole number is right");
            }
            return (int) told.getAsDouble();
        }
        int most = 1;
        for (Node step : steps) {
            Optional<String> cylinder = step instanceof MappingNode
                    ? Fields.of(step, "a step", problems).take("cylinder").flatMap(this::scalar)
                    : Optional.empty();
            if (cylinder.isPresent() && CYLINDER.matcher(cylinder.get()).matches() && cylinder.get().length() < 3) {
                most = Math.max(most, Math.min(EngineFacts.MOST_CYLINDERS, Integer.parseInt(cylinder.get())));
            }
        }
        int guess = most == 1 || most == 3 ? 4 : most;
        asks.add(new FindingCase.Ask("cylinders", 0, String.valueOf(guess)));
        return guess;
    }

    private double ambient(Fields fields) {
        OptionalDouble height = number(fields, "altitude_m", -500, 6000);
        return height.isPresent()
                ? StandardAtmosphere.pressure_Pa(height.getAsDouble())
                : SEA_LEVEL_PA;
    }

    private EngineFacts.Healthy healthy(Fields fields, double ambient) {
        Optional<String> text = text(fields, "nominal_comp");
        boolean known = text(fields, "nominal_known").map(each -> each.equals("true") || each.equals("yes")).orElse(false);
        if (text.isEmpty()) {
            asks.add(new FindingCase.Ask("healthy compression", 0, "worked out from the compression ratio"));
            return new EngineFacts.Healthy(OptionalDouble.empty(), false);
        }
        Node at = fields.take("nominal_comp").orElse(fields.node());
        Optional<Figures.Quantity> quantity = Figures.quantity(text.get());
        OptionalDouble unit = quantity.isEmpty() || quantity.get().unit().isEmpty()
                ? OptionalDouble.of(Figures.BAR)
                : Figures.pascals(quantity.get().unit());
        double pressure = quantity.isEmpty() ? 0 : quantity.get().value() * unit.orElse(0);
        if (pressure < 1e5 || pressure > 60e5) {
            problems.fault(
                    at,
                    Wording.shown(text.get()) + " cannot be a healthy compression",
                    "in bar, from 1 to 60; or with its unit, as in 170 psi");
            return new EngineFacts.Healthy(OptionalDouble.empty(), false);
        }
        return new EngineFacts.Healthy(
                OptionalDouble.of(pressure * ambient / SEA_LEVEL_PA), known);
    }

    private EngineFacts.Layout layout(Fields fields, int cylinders) {
        List<Integer> firing = new ArrayList<>();
        for (String key : List.of("firing", "firing_order")) {
            text(fields, key).ifPresent(text -> numbers(text, cylinders).forEach(firing::add));
        }
        if (!firing.isEmpty() && (firing.size() != cylinders || Set.copyOf(firing).size() != cylinders)) {
            problems.fault(fields.at("firing"), "the firing order does not name every cylinder once", "as in [1, 3, 4, 2]");
            firing.clear();
        }
        List<List<Integer>> banks = new ArrayList<>();
        fields.take("banks").ifPresent(node -> {
            if (node instanceof SequenceNode sequence) {
                sequence.getValue().forEach(bank -> banks.add(numbers(scalar(bank).orElse(""), cylinders)));
            }
        });
        if (banks.stream().flatMap(List::stream).distinct().count() == cylinders) {
            return new EngineFacts.Layout(firing, banks);
        }
        String shape = text(fields, "layout").orElse("").toLowerCase(Locale.ROOT);
        if (cylinders > 1 && (shape.startsWith("v") || shape.startsWith("flat") || shape.startsWith("boxer"))) {
            asks.add(new FindingCase.Ask("banks", 0, "the first half of the numbers is one bank"));
            List<Integer> all = EngineFacts.Layout.inline(cylinders).banks().getFirst();
            return new EngineFacts.Layout(
                    firing, List.of(all.subList(0, (cylinders + 1) / 2), all.subList((cylinders + 1) / 2, cylinders)));
        }
        return new EngineFacts.Layout(firing, EngineFacts.Layout.inline(cylinders).banks());
    }

    private static List<Integer> numbers(String text, int most) {
        List<Integer> numbers = new ArrayList<>();
        Matcher matcher = CYLINDER.matcher(text);
        while (matcher.find()) {
            int number = matcher.group().length() > 2 ? 0 : Integer.parseInt(matcher.group());
            if (number >= 1 && number <= most) {
                numbers.add(number);
            }
        }
        return numbers;
    }

    private Set<String> has(Fields fields, boolean diesel, int cylinders, EngineFacts.Layout layout) {
        Set<String> has = new LinkedHashSet<>();
        String cooling = text(fields, "cooling").orElse("liquid").toLowerCase(Locale.ROOT);
        boolean liquid = !cooling.contains("air") || cooling.contains("water") || cooling.contains("liquid");
        String fuelling = text(fields, "fuelling").orElse("").toLowerCase(Locale.ROOT);
        boolean carburettor = fuelling.contains("carb");
        boolean common = diesel && (fuelling.isEmpty() || fuelling.contains("common"));
        add(has, diesel ? "diesel" : "petrol", true);
        add(has, "spark", !diesel);
        add(has, "liquid", liquid);
        add(has, "air", !liquid);
        add(has, "turbo", yes(fields, "turbo", false));
        add(has, "several", cylinders > 1);
        add(has, "banks", layout.banks().size() > 1);
        add(has, "injection", !carburettor);
        add(has, "common rail", yes(fields, "common_rail", common));
        add(has, "cooled recirculation", yes(fields, "egr_cooler", common && liquid));
        add(has, "particle filter", yes(fields, "particle_filter", common));
        add(has, "pushrods", yes(fields, "pushrods", !liquid));
        add(has, "decompressor", yes(fields, "decompressor", false));
        return has;
    }

    private static void add(Set<String> has, String word, boolean really) {
        if (really) {
            has.add(word);
        }
    }

    private boolean yes(Fields fields, String key, boolean otherwise) {
        return text(fields, key).map(text -> text.equals("true") || text.equals("yes")).orElse(otherwise);
    }
}
