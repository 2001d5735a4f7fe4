package gudgeon.core.planning;

import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.Spend;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Time, kind and spends of single actions under a request. */
final class Steps {
    private Steps() {}

    /** Whether a joint is cut because it will not come. */
    static boolean isCut(Model model, StripRequest request, int action) {
        return action < model.joints && request.willNotCome().contains(model.actionId(action));
    }

    static long seconds(Model model, StripRequest request, int action) {
        if (action >= model.joints) {
            return ready(model, action).seconds();
        }
        Joint.Work work = model.engine.joints().get(action).work();
        return isCut(model, request, action)
                ? work.cut().map(Joint.Cut::seconds).orElse(0L)
                : work.undo().expectedSeconds();
    }

    static List<Spend> spends(Model model, StripRequest request, int action) {
        if (action >= model.joints) {
            return ready(model, action).effect().spends();
        }
        Joint joint = model.engine.joints().get(action);
        List<Spend> spends = new ArrayList<>(joint.makeup().spends());
        if (isCut(model, request, action)) {
            joint.work().cut().ifPresent(cut -> spends.addAll(cut.destroys()));
        }
        return merged(spends);
    }

    static StripPlan.Kind kind(Model model, StripRequest request, int action) {
        if (action < model.joints) {
            return isCut(model, request, action) ? StripPlan.Kind.CUT : StripPlan.Kind.UNDO;
        }
        return StripPlan.Kind.of(ready(model, action).kind());
    }

    /** Tools of an action; a joint that is cut takes those of its destructive way. */
    static List<String> tools(Model model, StripRequest request, int action) {
        if (action >= model.joints) {
            return ready(model, action).tools();
        }
        Joint.Work work = model.engine.joints().get(action).work();
        return isCut(model, request, action)
                ? work.cut().map(Joint.Cut::tools).orElse(List.of())
                : work.tools();
    }

    static Ready ready(Model model, int action) {
        return model.engine.ready().get(action - model.joints);
    }

    /** Spends of equal specification and price added up, in order of first appearance. */
    static List<Spend> merged(List<Spend> spends) {
        Map<List<Object>, Spend> bySpec = new LinkedHashMap<>();
        for (Spend spend : spends) {
            OptionalDouble price = spend.priceEach();
            bySpec.merge(
                    List.of(spend.spec(), price),
                    spend,
                    (a, b) -> new Spend(a.spec(), a.count() + b.count(), a.priceEach()));
        }
        return List.copyOf(bySpec.values());
    }
}
