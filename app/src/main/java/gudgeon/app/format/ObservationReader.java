package gudgeon.app.format;

import gudgeon.core.finding.EngineFacts;
import gudgeon.core.finding.FindingKind;
import gudgeon.core.finding.Instruments;
import gudgeon.core.finding.Knowledge;
import gudgeon.core.finding.Observation;
import gudgeon.core.finding.Place;
import gudgeon.core.finding.TestKind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads the steps of a case. */
final class ObservationReader {
    private static final double MOST_PRESSURE = 80e5;
    private static final double DIFFERS = 1.1;
    private static final double MOST_OF_CLEARANCE = 0.6;

    private final Problems problems;
    private final List<FindingCase.Ask> asks;
    private final EngineFacts facts;
    private final Knowledge knowledge = FindingKnowledge.shipped();
    private final Map<String, Double> dry = new LinkedHashMap<>();
    private final Map<String, Observation> first = new LinkedHashMap<>();

    ObservationReader(Problems problems, List<FindingCase.Ask> asks, EngineFacts facts) {
        this.problems = problems;
        this.asks = asks;
        this.facts = facts;
    }

    List<Observation> read(List<Node> steps) {
        List<Step> all = new ArrayList<>();
        steps.forEach(node -> step(node).ifPresent(all::add));
        all.stream().filter(step -> step.figure().equals(Optional.of(TestKind.Figure.COMPRESSION))).forEach(this::dry);
        List<Observation> observations = new ArrayList<>();
        for (Step step : all) {
            Optional<Observation> each = step.figure().isPresent() ? measured(step, step.figure().get()) : seen(step);
            each.filter(this::isNews).ifPresent(observations::add);
        }
        return Sittings.told(observations);
    }

    /** One step, its test known. */
    private record Step(
            Fields fields, String test, Optional<FindingKind> finding, Optional<TestKind.Figure> figure, int cylinder) {}

    private Optional<Step> step(Node node) {
        Fields fields = Fields.of(node, "a step", problems);
        Optional<TroubleCodes.Meaning> code = code(fields);
        String findingId = code.map(TroubleCodes.Meaning::finding).orElseGet(() -> text(fields, "finding"));
        Optional<FindingKind> finding = findingId.isEmpty() ? Optional.empty() : knowledge.findFinding(findingId);
        if (!findingId.isEmpty() && finding.isEmpty()) {
            problems.fault(
                    fields.take("finding").orElse(node),
                    Wording.shown(findingId) + " is no finding that is known",
                    Wording.maybe(findingId, knowledge.findings().keySet(), "see findings.yaml"));
            return Optional.empty();
        }
        String testId = finding.map(FindingKind::test).orElseGet(() -> text(fields, "test"));
        Optional<TestKind> test = knowledge.findTest(testId);
        if (test.isEmpty()) {
            problems.fault(
                    fields.take("test").orElse(node),
                    testId.isEmpty() ? "a step has neither test nor finding" : Wording.shown(testId) + " is no test that is known",
                    Wording.maybe(testId, knowledge.tests().keySet(), "see tests.yaml"));
            return Optional.empty();
        }
        if (finding.isEmpty() && test.get().reads().isEmpty()) {
            problems.fault(node, testId + " is answered with yes or no, and no finding is named", "add finding");
            return Optional.empty();
        }
        Optional<TestKind.Figure> figure = finding.isPresent() ? Optional.empty() : test.get().reads();
        boolean ofCylinder = figure.isPresent() || finding.filter(kind -> kind.at() == Place.CYLINDER).isPresent();
        int cylinder = code.isPresent() && code.get().cylinder() > 0
                ? checked(code.get().cylinder(), fields)
                : ofCylinder ? cylinder(fields) : 0;
        return cylinder < 0
                ? Optional.empty()
                : Optional.of(new Step(fields, testId, finding, figure, cylinder));
    }

    private Optional<TroubleCodes.Meaning> code(Fields fields) {
        String code = text(fields, "code");
        if (code.isEmpty()) {
            return Optional.empty();
        }
        Optional<TroubleCodes.Meaning> meaning = FindingKnowledge.codes().find(code);
        if (meaning.isEmpty()) {
            problems.warning(
                    fields.at("code"), Wording.shown(code) + " is no code that is known here; it is left out", "");
        }
        return meaning;
    }

    private String text(Fields fields, String key) {
        String text = fields.has(key) ? fields.text(key, "") : "";
        return text.equals("null") ? "" : text;
    }

    private int cylinder(Fields fields) {
        String text = text(fields, "cylinder");
        if (text.isEmpty()) {
            if (facts.cylinders() == 1) {
                return 1;
            }
            problems.fault(fields.node(), "a step of a cylinder does not say which", "add cylinder: 1 to " + facts.cylinders());
            return -1;
        }
        OptionalDouble number = Figures.within(
                fields.take("cylinder").orElse(fields.node()), text, 1, facts.cylinders(), "a cylinder of this engine", problems);
        if (number.isPresent() && number.getAsDouble() != Math.rint(number.getAsDouble())) {
            problems.fault(fields.at("cylinder"), text + " is no cylinder", "a whole number is right");
            return -1;
        }
        return number.isEmpty() ? -1 : (int) number.getAsDouble();
    }

    private int checked(int cylinder, Fields fields) {
        if (cylinder > facts.cylinders()) {
            problems.fault(
                    fields.at("code"),
                    "the code is of cylinder " + cylinder + ", the engine has " + facts.cylinders(),
                    "look at the code again");
            return -1;
        }
        return cylinder;
    }

    private Optional<Observation> seen(Step step) {
        FindingKind finding = step.finding().orElseThrow();
        String value = text(step.fields(), "value").toLowerCase(Locale.ROOT);
        if (List.of("unknown", "unsure", "not done").contains(value)) {
            return Optional.empty();
        }
        boolean there = List.of("yes", "true", "present", "1").contains(value)
                || (value.isEmpty() && step.fields().has("code"));
        if (!there && !List.of("no", "false", "absent", "0").contains(value)) {
            problems.fault(
                    step.fields().take("value").orElse(step.fields().node()),
                    value.isEmpty()
                            ? finding.id() + " is not answered"
                            : Wording.shown(value) + " is no answer to " + finding.id(),
                    "yes, no, or unsure");
            return Optional.empty();
        }
        return Optional.of(
                new Observation.Seen(step.test(), finding.id(), step.cylinder(), there, sitting(step)));
    }

    private static int sitting(Step step) {
        return step.fields().has("sitting") ? step.fields().whole("sitting", 1, 1, 99) : 1;
    }

    private boolean isNews(Observation each) {
        String what = each instanceof Observation.Seen seen ? seen.finding() : each.test();
        Observation earlier = first.putIfAbsent(what + "/" + each.cylinder(), each);
        if (earlier instanceof Observation.Seen was && each instanceof Observation.Seen is) {
            if (was.there() == is.there()) {
                return false;
            }
            problems.add(
                    Severity.WARNING, 0, 0, what + at(each) + " is answered yes and no", "both count, the second as done again");
        }
        if (earlier instanceof Observation.Measured was && each instanceof Observation.Measured is
                && Math.max(was.value(), is.value()) > DIFFERS * Math.min(was.value(), is.value())) {
            problems.add(
                    Severity.WARNING, 0, 0, what + at(each) + " reads differently the second time", "both count");
        }
        return true;
    }

    private static String at(Observation each) {
        return each.cylinder() == 0 ? "" : " of cylinder " + each.cylinder();
    }

    private void dry(Step step) {
        pressure(step).ifPresent(pressure -> dry.put(String.valueOf(step.cylinder()), pressure));
    }

    private Optional<Observation> measured(Step step, TestKind.Figure figure) {
        OptionalDouble value =
                switch (figure) {
                    case COMPRESSION -> toOptional(dry.get(String.valueOf(step.cylinder())), step);
                    case WET_RATIO -> wet(step);
                    case LEAK -> loss(step);
                    case CURRENT -> plain(step, 0, 3, "a hump over that of the better half");
                    case BALANCE -> plain(step, -1, 10, "a fall of speed over the median fall");
                };
        if (value.isEmpty()) {
            return Optional.empty();
        }
        double oil = figure == TestKind.Figure.WET_RATIO ? oil(step) : 0;
        OptionalDouble orifice = figure == TestKind.Figure.LEAK ? orifice(step) : OptionalDouble.empty();
        double supply = figure == TestKind.Figure.LEAK ? supply(step) : 0;
        return Optional.of(new Observation.Measured(
                step.test(), figure, step.cylinder(), value.getAsDouble(), oil, orifice, supply, sitting(step)));
    }

    private OptionalDouble toOptional(@org.jspecify.annotations.Nullable Double any, Step step) {
        Optional<Double> own = any == null ? Optional.empty() : pressure(step);
        return own.isPresent() ? OptionalDouble.of(own.get()) : OptionalDouble.empty();
    }

    private Figures.Quantity value(Step step) {
        String text = text(step.fields(), "value");
        String unit = text(step.fields(), "unit");
        Optional<Figures.Quantity> quantity = Figures.quantity(text);
        if (quantity.isEmpty()) {
            problems.fault(
                    step.fields().take("value").orElse(step.fields().node()),
                    text.isEmpty() ? "a step of " + step.test() + " has no value" : Wording.shown(text) + " is no figure",
                    "a number, and its unit");
            return new Figures.Quantity(Double.NaN, unit);
        }
        return new Figures.Quantity(quantity.get().value(), unit.isEmpty() ? quantity.get().unit() : unit);
    }

    private Optional<Double> pressure(Step step) {
        Figures.Quantity value = value(step);
        if (Double.isNaN(value.value())) {
            return Optional.empty();
        }
        OptionalDouble unit = value.unit().isEmpty() ? OptionalDouble.of(Figures.BAR) : Figures.pascals(value.unit());
        Node at = step.fields().take("value").orElse(step.fields().node());
        if (unit.isEmpty()) {
            problems.fault(at, Wording.shown(value.unit()) + " is no unit of pressure", "bar, kPa or psi");
            return Optional.empty();
        }
        boolean absolute = Figures.absolute(value.unit()) || Figures.absolute(text(step.fields(), "reading"));
        double gauge = value.value() * unit.getAsDouble() - (absolute ? facts.cranking().ambient() : 0);
        if (!(gauge >= 0 && gauge <= MOST_PRESSURE)) {
            problems.fault(
                    at,
                    Figures.plain(value.value()) + " " + (value.unit().isEmpty() ? "bar" : value.unit())
                            + " cannot be a compression",
                    "0 to 80 bar is read" + (value.unit().isEmpty() ? "; maybe it is in psi, then say so" : ""));
            return Optional.empty();
        }
        return Optional.of(gauge);
    }

    private OptionalDouble wet(Step step) {
        Figures.Quantity value = value(step);
        Node at = step.fields().take("value").orElse(step.fields().node());
        double ratio = value.value();
        if (Figures.pascals(value.unit()).isPresent()) {
            Double before = dry.get(String.valueOf(step.cylinder()));
            Optional<Double> after = pressure(step);
            if (before == null || before <= 0 || after.isEmpty()) {
                problems.fault(
                        at, "there is no dry compression of cylinder " + step.cylinder() + " to compare with", "add it, or give the ratio");
                return OptionalDouble.empty();
            }
            ratio = after.get() / before;
        }
        return bounded(at, ratio, 0.2, 10, "a wet compression over the dry one");
    }

    private OptionalDouble loss(Step step) {
        Figures.Quantity value = value(step);
        Node at = step.fields().take("value").orElse(step.fields().node());
        OptionalDouble unit = Figures.pascals(value.unit());
        if (unit.isPresent()) {
            double share = 1 - value.value() * unit.getAsDouble() / supply(step);
            return bounded(at, share, 0, 1, "the cylinder's pressure in a leak-down test, against its supply");
        }
        boolean fraction = List.of("ratio", "fraction", "share").contains(value.unit());
        return bounded(at, fraction ? value.value() : value.value() / 100, 0, 1, "a loss, 0 to 100 per cent");
    }

    private OptionalDouble plain(Step step, double least, double most, String what) {
        Figures.Quantity value = value(step);
        boolean cent = value.unit().equals("%") || value.unit().contains("cent");
        return bounded(
                step.fields().take("value").orElse(step.fields().node()),
                cent ? value.value() / 100 : value.value(), least, most, what);
    }

    private OptionalDouble bounded(Node at, double value, double least, double most, String what) {
        if (Double.isNaN(value)) {
            return OptionalDouble.empty();
        }
        if (!(value >= least && value <= most)) {
            problems.fault(
                    at,
                    Figures.plain(value) + " cannot be " + what,
                    "from " + Figures.plain(least) + " to " + Figures.plain(most) + " is read");
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(value);
    }

    private double oil(Step step) {
        String text = text(step.fields(), "oil_ml");
        if (text.isEmpty()) {
            asks.add(new FindingCase.Ask("oil", step.cylinder(), "5 ml"));
            return 5e-6;
        }
        double clearance = facts.sweptVolume() / facts.cylinders() / (facts.ratio() - 1);
        OptionalDouble oil = Figures.within(
                step.fields().take("oil_ml").orElse(step.fields().node()), text, 0,
                Math.floor(clearance * 1e6 * MOST_OF_CLEARANCE), "the oil put in, in ml, with this clearance", problems);
        return oil.orElse(5) * 1e-6;
    }

    private OptionalDouble orifice(Step step) {
        OptionalDouble orifice = Figures.orifice(text(step.fields(), "orifice"));
        if (orifice.isEmpty()) {
            asks.add(new FindingCase.Ask("orifice", step.cylinder(), "0.040 in, and the reading counts for less"));
        } else if (orifice.getAsDouble() < 0.2e-3 || orifice.getAsDouble() > 6e-3) {
            problems.fault(step.fields().at("orifice"), "no tester has such an orifice", "0.2 to 6 mm, 0.040 in is usual");
        }
        return orifice;
    }

    private double supply(Step step) {
        OptionalDouble supply = Figures.supply(text(step.fields(), "supply") + " " + text(step.fields(), "orifice"));
        double pressure = supply.orElse(Instruments.USUAL_SUPPLY);
        if (pressure < 0.5e5 || pressure > 12e5) {
            problems.fault(step.fields().at("orifice"), "no tester has such a supply", "0.5 to 12 bar, 80 psi is usual");
        }
        return pressure;
    }
}
