package gudgeon.app.format;

import gudgeon.core.finding.Depth;
import gudgeon.core.finding.Diagnosis;
import gudgeon.core.finding.NextTests;
import gudgeon.core.finding.Observation;
import gudgeon.core.finding.OpeningCosts;
import gudgeon.core.finding.Posterior;
import gudgeon.core.finding.Sitting;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What is believed to be wrong, as JSON; the keys are described in docs/json.md. */
public final class FindJson {
    private static final double LEAST = 0.0005;
    private static final double SUSPECT = 0.15;
    private static final int MOST_STEPS = 12;

    private FindJson() {}

    /** One document. */
    public static String write(FindingCase asked, Diagnosis diagnosis, NextTests next) {
        Posterior posterior = diagnosis.posterior();
        List<Diagnosis.Weighed> weighed = diagnosis.weighed();
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("case", asked.id());
        all.put("posteriors", posteriors(posterior));
        all.put("depth", word(posterior.likely()));
        all.put("depth_chances", depths(posterior));
        all.put("plan", plan(next.plan()));
        all.put("opening_minutes", opening(next.costs()));
        all.put("conflict", conflict(diagnosis, weighed));
        all.put("suspects", suspects(posterior, weighed));
        all.put("next_tests", steps(next, weighed));
        all.put("reasons", weighed.stream().map(FindJson::reason).toList());
        all.put("healthy_compression_bar", round(posterior.healthy() / 1e5, 2));
        all.put("left_out", posterior.leftOut());
        all.put("asks", asked.asks());
        all.put("remarks", asked.remarks().stream().map(Problem::text).toList());
        return PlainJson.text(all);
    }

    private static List<Map<String, Object>> posteriors(Posterior posterior) {
        List<Map<String, Object>> list = new ArrayList<>();
        for (Posterior.Belief belief : posterior.beliefs()) {
            if (belief.chance() >= LEAST) {
                Map<String, Object> row = new LinkedHashMap<>();
                row.put("fault", belief.fault().id());
                row.put("where", belief.where().label());
                row.put("probability", round(belief.chance(), 6));
                row.put("name", belief.fault().words().name());
                row.put("depth", word(belief.fault().repair().mended()));
                list.add(row);
            }
        }
        return list;
    }

    private static Map<String, Object> depths(Posterior posterior) {
        Map<String, Object> depths = new LinkedHashMap<>();
        for (Depth depth : Depth.values()) {
            if (depth != Depth.NONE) {
                depths.put(word(depth), round(posterior.atLeast(depth), 6));
            }
        }
        return depths;
    }

    private static Map<String, Object> plan(NextTests.Plan plan) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("order", plan.order().stream().map(FindJson::name).toList());
        row.put("expected_minutes", round(plan.minutes(), 0));
        row.put("first_opens_to", word(plan.to()));
        row.put("first_mend", plan.order().isEmpty() ? "" : plan.order().getFirst().fault().words().mend());
        return row;
    }

    private static Map<String, Object> opening(OpeningCosts costs) {
        Map<String, Object> row = new LinkedHashMap<>();
        for (Depth depth : Depth.values()) {
            if (depth != Depth.NONE) {
                row.put(word(depth), round(costs.upTo(depth), 0));
            }
        }
        row.put("typical", costs.typical());
        return row;
    }

    private static String name(Posterior.Belief belief) {
        return belief.fault().id() + "@" + belief.where().label();
    }

    private static List<Map<String, Object>> steps(NextTests next, List<Diagnosis.Weighed> weighed) {
        List<Map<String, Object>> rows = new ArrayList<>();
        next.repeats(weighed, SUSPECT).forEach(step -> rows.add(step(step)));
        next.ranked().stream().limit(MOST_STEPS).forEach(step -> rows.add(step(step)));
        return rows;
    }

    private static Map<String, Object> step(NextTests.Step step) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("kind", step.kind().name().toLowerCase(Locale.ROOT));
        row.put("test", step.test().id());
        row.put("name", step.test().name());
        row.put("cylinders", step.cylinders());
        row.put("minutes", round(step.minutes(), 1));
        row.put("bits", round(step.bits(), 4));
        row.put("bits_per_minute", round(step.rate(), 5));
        row.put("saves_minutes", round(step.saves(), 1));
        row.put("pays", step.saves() > step.minutes());
        row.put("missing_tools", step.missing());
        row.put("cautions", step.test().cautions());
        row.put("answers", step.answers().stream().map(FindJson::answer).toList());
        return row;
    }

    private static Map<String, Object> answer(NextTests.Outcome outcome) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("shows", outcome.words());
        row.put("chance", round(outcome.chance(), 4));
        row.put("then_leads", name(outcome.leads()));
        row.put("then", round(outcome.then(), 4));
        return row;
    }

    private static Map<String, Object> reason(Diagnosis.Weighed weighed) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("test", weighed.sitting().test());
        row.put("cylinder", weighed.sitting().cylinder() == 0 ? "engine" : String.valueOf(weighed.sitting().cylinder()));
        row.put("observations", weighed.sitting().observations().stream().map(FindJson::text).toList());
        row.put("decibans", round(weighed.decibans(), 2));
        return row;
    }

    private static Map<String, Object> conflict(Diagnosis diagnosis, List<Diagnosis.Weighed> weighed) {
        double bits = diagnosis.conflict();
        Map<String, Object> conflict = new LinkedHashMap<>();
        conflict.put("bits", round(bits, 3));
        conflict.put("contradict", bits > 0 || weighed.stream().anyMatch(each -> each.bad() >= 0.5));
        return conflict;
    }

    private static List<Map<String, Object>> suspects(Posterior posterior, List<Diagnosis.Weighed> weighed) {
        List<Map<String, Object>> suspects = new ArrayList<>();
        weighed.stream()
                .filter(each -> each.bad() >= SUSPECT)
                .sorted((a, b) -> Double.compare(b.bad(), a.bad()))
                .forEach(each -> suspects.add(sitting(each)));
        if (posterior.badRun() >= SUSPECT) {
            Map<String, Object> run = new LinkedHashMap<>();
            run.put("test", "T_COMP");
            run.put("cylinder", "all");
            run.put("bad", round(posterior.badRun(), 4));
            run.put("observations", List.of("every compression figure"));
            suspects.add(run);
        }
        return suspects;
    }

    private static Map<String, Object> sitting(Diagnosis.Weighed weighed) {
        Sitting sitting = weighed.sitting();
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("test", sitting.test());
        row.put("cylinder", sitting.cylinder() == 0 ? "engine" : String.valueOf(sitting.cylinder()));
        row.put("bad", round(weighed.bad(), 4));
        row.put("observations", sitting.observations().stream().map(FindJson::text).toList());
        return row;
    }

    private static String text(Observation each) {
        return switch (each) {
            case Observation.Seen seen -> seen.finding() + (seen.there() ? ": yes" : ": no");
            case Observation.Measured measured -> switch (measured.figure()) {
                case COMPRESSION -> "compression: " + round(measured.value() / 1e5, 2) + " bar";
                case WET_RATIO -> "wet over dry: " + round(measured.value(), 3);
                case LEAK -> "leak-down: " + round(measured.value() * 100, 1) + " per cent";
                case CURRENT -> "current hump: " + round(measured.value(), 3);
                case BALANCE -> "speed drop: " + round(measured.value(), 3);
            };
        };
    }

    static String word(Depth depth) {
        return depth.name().toLowerCase(Locale.ROOT);
    }

    static double round(double value, int digits) {
        double scale = Math.pow(10, digits);
        return Math.rint(value * scale) / scale;
    }
}
