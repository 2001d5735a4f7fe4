package gudgeon.core.planning;

import gudgeon.core.engine.Engine;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Plans the way back after a strip (docs/build.md). Pure and deterministic: the same engine and request give the same plan.
 */
public final class BuildPlanner {
    private BuildPlanner() {}

    /**
     * The way back after a planned strip. When the request names no lift (a book may tell only what was undone), the lifts
     * of the strip are taken to have happened where they stand in it.
     *
     * @throws IllegalArgumentException when the request names something the engine does not have
     */
    public static BuildPlan plan(Engine engine, StripPlan strip, BuildRequest request) {
        boolean told = request.steps().stream().anyMatch(step -> step.kind() == StripPlan.Kind.LIFT);
        return plan(engine, told ? request : request.withSteps(withLifts(strip, request)));
    }

    /**
     * The way back after the steps of the request, lifts among them.
     *
     * @throws IllegalArgumentException when the request names something the engine does not have
     */
    public static BuildPlan plan(Engine engine, BuildRequest request) {
        Model model = new Model(engine);
        BuildNet net = new BuildNet(model, new BuildHistory(model, request.steps()), request.ways());
        BuildMarks.apply(net, BuildRules.apply(net));
        BuildRules.electricLast(net);
        BuildLacks lacks = new BuildLacks(net, request);
        List<BitSet> ancestors = net.graph.ancestors();
        BuildSchedule.Found found = BuildSchedule.best(net, ancestors);
        BuildSchedule.report(net, found);
        return new BuildWriter(net, lacks, ancestors, found).plan();
    }

    private static List<BuildRequest.Step> withLifts(StripPlan strip, BuildRequest request) {
        List<BuildRequest.Step> steps = new ArrayList<>(request.steps());
        List<String> before = new ArrayList<>();
        for (BuildRequest.Step planned :
                BuildRequest.after(strip, request.ways()).steps()) {
            if (planned.kind() == StripPlan.Kind.LIFT) {
                int at = steps.size();
                while (at > 0 && !before.contains(steps.get(at - 1).id())) {
                    at--;
                }
                steps.add(at, planned);
            }
            before.add(planned.id());
        }
        return steps;
    }
}
