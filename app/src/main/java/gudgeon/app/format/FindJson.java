package gudgeon.app.format;

import gudgeon.core.finding.Depth;
import gudgeon.core.finding.Diagnosis;
import gudgeon.core.finding.Observation;
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

    private FindJson() {}

    /** One document. */
    public static String write(FindingCase asked, Diagnosis diagnosis) {
        Posterior posterior = diagnosis.posterior();
        List<Diagnosis.Weighed> weighed = diagnosis.weighed();
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("case", asked.id());
        all.put("posteriors", posteriors(posterior));
        all.put("depth", word(posterior.likely()));
        all.put("depth_chances", depths(posterior));
        all.put("conflict", conflict(diagnosis));
        all.put("suspects", suspects(posterior, weighed));
        all.put("next_tests", List.of());
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

    private static Map<String, Object> conflict(Diagnosis diagnosis) {
        double bits = diagnosis.conflict();
        Map<String, Object> conflict = new LinkedHashMap<>();
        conflict.put("bits", round(bits, 3));
        conflict.put("contradict", bits > 0);
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
