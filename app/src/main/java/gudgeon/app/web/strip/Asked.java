package gudgeon.app.web.strip;

import gudgeon.app.desk.StripQuestion;
import gudgeon.app.web.engines.EnginePaths;
import gudgeon.app.web.page.Refusal;
import gudgeon.core.engine.Engine;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a strip page was asked, as it stands in its address.
 *
 * @param engine id of the engine
 * @param goal what is to be reached
 * @param stuck joints that will not come
 * @param with ways of lifting beside one's own arms
 * @param effort about how many seconds the order may be searched
 */
public record Asked(String engine, StripQuestion.Goal goal, List<String> stuck, List<String> with, int effort) {
    /** Seconds of the first try; what is left unproven is said. */
    public static final int QUICK = 2;

    /** Seconds of the long try. */
    public static final int LONG = 60;

    private static final int MOST = 60;

    public Asked {
        stuck = List.copyOf(stuck);
        with = List.copyOf(with);
    }

    static Asked of(Context request, Engine engine) {
        return new Asked(
                engine.identity().id(),
                new StripQuestion.Goal(
                        list(request, "reach"), list(request, "aside"), list(request, "open"), list(request, "measure")),
                list(request, "stuck"),
                list(request, "with"),
                request.queryParam("longer") == null ? QUICK : LONG);
    }

    private static List<String> list(Context request, String name) {
        Set<String> values = new LinkedHashSet<>(request.queryParams(name));
        values.remove("");
        if (values.size() > MOST || values.stream().anyMatch(value -> value.length() > 200)) {
            throw Refusal.wrong("That is more than one plan is asked for.", "At most " + MOST + " names of each kind.");
        }
        return List.copyOf(values);
    }

    StripQuestion question(Engine of) {
        return new StripQuestion(
                of,
                goal,
                new StripQuestion.Found(List.of(), stuck),
                new StripQuestion.Means(with, 0, effort));
    }

    /** The address of the same question with something else. */
    Asked withStuck(List<String> joints) {
        return new Asked(engine, goal, joints, with, effort);
    }

    Asked withWays(List<String> ways) {
        return new Asked(engine, goal, stuck, ways, effort);
    }

    Asked withEffort(int seconds) {
        return new Asked(engine, goal, stuck, with, seconds);
    }

    Asked withGoal(StripQuestion.Goal other) {
        return new Asked(engine, other, stuck, with, effort);
    }

    /** The values of each name in the address. */
    Map<String, List<String>> values() {
        return Map.of(
                "reach", goal.reach(), "aside", goal.aside(), "open", goal.open(), "measure", goal.measure(), "stuck", stuck,
                "with", with);
    }

    /** The address. */
    public String href() {
        List<String> pairs = new ArrayList<>();
        Map<String, List<String>> values = values();
        for (String name : List.of("reach", "aside", "open", "measure", "stuck", "with")) {
            values.getOrDefault(name, List.of()).forEach(value -> pairs.add(name + "=" + EnginePaths.encoded(value)));
        }
        if (effort == LONG) {
            pairs.add("longer=yes");
        }
        return "/engines/" + engine + "/strip" + (pairs.isEmpty() ? "" : "?" + String.join("&", pairs));
    }

    static List<String> without(List<String> all, String one) {
        return all.stream().filter(other -> !other.equals(one)).toList();
    }

    static List<String> plus(List<String> all, String one) {
        List<String> more = new ArrayList<>(all);
        more.add(one);
        return more;
    }
}
