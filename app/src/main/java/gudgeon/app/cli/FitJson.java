package gudgeon.app.cli;

import gudgeon.app.desk.FloatQuestion;
import gudgeon.app.desk.GasketQuestion;
import gudgeon.app.desk.PairQuestion;
import gudgeon.app.desk.RingQuestion;
import gudgeon.app.desk.ShellQuestion;
import gudgeon.app.desk.ShimQuestion;
import gudgeon.app.desk.TinQuestion;
import gudgeon.app.desk.WeightQuestion;
import gudgeon.core.fitting.BoltInHole;
import gudgeon.core.fitting.GasketFit;
import gudgeon.core.fitting.Leftover;
import gudgeon.core.fitting.MixedTin;
import gudgeon.core.fitting.WeightFit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Answers about fits as maps, ready to be written as JSON; keys are in docs/json.md. Indices count from 0. */
final class FitJson {
    private FitJson() {}

    static Map<String, @Nullable Object> shims(ShimQuestion.Answer answer) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("valves", answer.valves());
        map.put("before", answer.fit().before());
        map.put("plans", answer.fit().plans());
        return map;
    }

    static Map<String, @Nullable Object> pairs(PairQuestion.Answer answer) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("aim", answer.aim());
        map.put("before", answer.fit().before());
        map.put("best", answer.fit().best());
        map.put("others", answer.fit().others());
        return map;
    }

    static Map<String, @Nullable Object> rings(RingQuestion.Answer answer) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("aim", answer.aim());
        map.put("before", answer.fit().before());
        map.put("best", answer.fit().best());
        return map;
    }

    static Map<String, @Nullable Object> shells(ShellQuestion.Answer answer) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("bearings", answer.bearings());
        map.put("grades", answer.grades());
        map.put("aim", answer.aim());
        map.put("plan", answer.fit().plan());
        map.put("one_grade", answer.fit().oneGrade());
        return map;
    }

    static Map<String, @Nullable Object> weights(WeightQuestion.Answer answer) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("kinds", answer.names());
        map.put("weights_g", answer.weights_g());
        map.put("before", plan(answer.fit().before(), answer.allowed_g()));
        map.put("best", plan(answer.fit().best(), answer.allowed_g()));
        map.put("proven", answer.fit().proven());
        return map;
    }

    private static Map<String, @Nullable Object> plan(WeightFit.Plan plan, double allowed_g) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("members", plan.members());
        map.put("sums_g", plan.sums_g());
        map.put("spread_g", plan.spread_g());
        map.put("take_off_g", plan.takeOff_g(allowed_g));
        return map;
    }

    static Map<String, @Nullable Object> gasket(GasketQuestion.Answer answer) {
        GasketFit fit = answer.fit();
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("pistons", answer.pistons());
        map.put("highest_mm", fit.highest_mm());
        map.put("grade", fit.grade().map(GasketFit.Grade::name).orElse(null));
        map.put("too_close", fit.tooClose().map(GasketFit.Grade::name).orElse(null));
        map.put("by_mean", fit.byMean().map(GasketFit.Grade::name).orElse(null));
        map.put("clearances_mm", fit.clearances_mm());
        map.put("spread_mm", fit.spread_mm());
        map.put("allowed_mm", answer.allowed_mm());
        map.put("low", fit.low());
        map.put("rocked", fit.rocked());
        return map;
    }

    static Map<String, @Nullable Object> endFloat(FloatQuestion.Answer answer) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("float_mm", answer.measured_mm());
        map.put("aim", answer.aim());
        map.put("choices", answer.fit().choices());
        return map;
    }

    static Map<String, @Nullable Object> tin(TinQuestion.Answer answer) {
        MixedTin tin = answer.tin();
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("bolts", tin.bolts().stream().map(bolt -> bolt.name()).toList());
        map.put("holes", tin.holes().stream().map(hole -> hole.name()).toList());
        map.put("ways", tin.ways().toString());
        map.put("ways_hole_by_hole", tin.waysHoleByHole().toString());
        map.put("over", tin.over());
        map.put("pairs", pairs(tin));
        map.put("ranges", tin.ranges());
        map.put("some", tin.some());
        map.put("unfilled", tin.unfilled());
        map.put("leftover", answer.leftover().map(FitJson::leftover).orElse(null));
        return map;
    }

    private static List<List<Map<String, @Nullable Object>>> pairs(MixedTin tin) {
        List<List<Map<String, @Nullable Object>>> rows = new ArrayList<>();
        for (List<BoltInHole> row : tin.pairs()) {
            List<Map<String, @Nullable Object>> cells = new ArrayList<>();
            for (BoltInHole pair : row) {
                Map<String, @Nullable Object> cell = new LinkedHashMap<>();
                cell.put("legal", pair.isLegal());
                cell.put("engaged_mm", pair.engaged_mm());
                cell.put("wanted_mm", pair.wanted_mm());
                cell.put("over_mm", Double.isFinite(pair.over_mm()) ? pair.over_mm() : null);
                cell.put("hindrances", pair.hindrances());
                cell.put("remarks", pair.remarks());
                cells.add(cell);
            }
            rows.add(cells);
        }
        return rows;
    }

    private static Map<String, @Nullable Object> leftover(Leftover left) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        map.put("bolt", left.bolt());
        map.put("likeliest", left.likeliest());
        map.put("to_look", left.toLook().stream().map(Leftover.Candidate::hole).toList());
        map.put("expected_cost", left.expectedCost());
        map.put("nowhere", left.nowhere());
        return map;
    }
}
