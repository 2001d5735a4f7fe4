package gudgeon.app.cli;

import gudgeon.app.desk.JobList;
import gudgeon.app.desk.LayOut;
import gudgeon.app.desk.PlanChange;
import gudgeon.app.format.EntryJson;
import gudgeon.core.book.Entry;
import gudgeon.core.planning.StripPlan;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Answers about jobs as maps, ready to be written as JSON. */
final class JobJson {
    private JobJson() {}

    static Map<String, Object> entry(Entry entry) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("seq", entry.seq());
        map.put("id", entry.id().toString());
        map.put("at", entry.stamp().at().toString());
        map.put("by", entry.stamp().by());
        map.put("device", entry.stamp().device());
        map.put("session", entry.stamp().session());
        map.put("kind", EntryJson.kind(entry.body()));
        map.put("about", entry.about());
        map.put("body", entry.body());
        return map;
    }

    static Map<String, Object> line(JobList.Line line) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("id", line.job().id());
        map.put("name", line.job().name());
        map.put("engine", Map.of("id", line.job().engine().identity().id()));
        map.put("stage", line.stage());
        map.put("steps_done", line.stepsDone());
        map.put("steps_left", line.stepsLeft());
        map.put("seconds_left", line.secondsLeft());
        map.put("next", line.next().map(JobJson::step).orElse(null));
        map.put("next_build", line.nextBuild().isEmpty() ? null : line.nextBuild());
        map.put("waits", line.waits());
        return map;
    }

    static Map<String, Object> step(StripPlan.Operation operation) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("kind", operation.kind());
        map.put("id", operation.id());
        map.put("parts", operation.pieces());
        map.put("zone", operation.place().zone());
        map.put("tools", operation.place().tools());
        map.put("seconds", operation.seconds());
        map.put("cautions", operation.cautions());
        return map;
    }

    static Map<String, Object> tool(LayOut.Tool tool) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("tool", tool.name());
        map.put("steps", tool.works().size());
        map.put("said", tool.said().map(said -> said.whose()).orElse(null));
        map.put("from", tool.said().map(said -> said.from()).orElse(""));
        return map;
    }

    static Map<String, Object> change(PlanChange change) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("seconds_before", change.before().seconds());
        map.put("seconds_after", change.after().seconds());
        map.put("planned_after", change.after().planned());
        map.put("added", steps(change.added()));
        map.put("gone", steps(change.gone()));
        map.put("buy_more", change.buyMore());
        map.put("buy_less", change.buyLess());
        return map;
    }

    private static List<Map<String, Object>> steps(List<StripPlan.Operation> operations) {
        return operations.stream().map(JobJson::step).toList();
    }
}
