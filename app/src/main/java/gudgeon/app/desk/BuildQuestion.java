package gudgeon.app.desk;

import gudgeon.core.engine.Engine;
import gudgeon.core.planning.BuildPlan;
import gudgeon.core.planning.BuildPlanner;
import gudgeon.core.planning.BuildRequest;
import gudgeon.core.planning.StripPlan;
import java.util.List;
import java.util.stream.Stream;

/**
 * How does it go back together after that strip?
 *
 * @param strip the strip that was planned
 * @param missing specifications of what is not in hand
 * @param confirmed features whose typical limits were confirmed
 */
public record BuildQuestion(StripQuestion.Reply.Planned strip, List<String> missing, List<String> confirmed) {
    public BuildQuestion {
        missing = List.copyOf(missing);
        confirmed = List.copyOf(confirmed);
    }

    /** The answer. */
    public sealed interface Reply {
        /** A plan; steps that lack something say so. */
        record Planned(StripQuestion.Reply.Planned strip, BuildRequest request, BuildPlan plan) implements Reply {}

        /** Some words name nothing; nothing was planned. */
        record Unknown(List<UnknownName> names) implements Reply {
            public Unknown {
                names = List.copyOf(names);
            }
        }
    }

    /** The way back, or which words mean nothing. */
    public Reply ask() {
        Engine engine = strip.engine();
        BuildRequest whole =
                BuildRequest.after(strip.plan(), strip.request().means().ways()).withEarlier(earlier());
        NameSearch names = new NameSearch(engine);
        List<String> features = names.features(confirmed);
        List<String> known = missing.isEmpty() ? List.of() : specifications(BuildPlanner.plan(engine, whole));
        List<String> specs = names.specifications(missing, known);
        if (!names.unknown().isEmpty()) {
            return new Reply.Unknown(names.unknown());
        }
        BuildRequest request = whole.withMissing(specs).withConfirmed(features);
        return new Reply.Planned(strip, request, BuildPlanner.plan(engine, request));
    }

    private List<BuildRequest.Step> earlier() {
        return Stream.concat(strip.request().done().stream(), strip.request().undone().stream())
                .map(id -> new BuildRequest.Step(kind(id), id, List.of()))
                .toList();
    }

    private StripPlan.Kind kind(String id) {
        return strip.engine()
                .findReady(id)
                .map(ready -> StripPlan.Kind.of(ready.kind()))
                .orElse(StripPlan.Kind.UNDO);
    }

    private static List<String> specifications(BuildPlan plan) {
        return plan.operations().stream()
                .flatMap(operation -> operation.needs().inputs().stream())
                .map(BuildPlan.Input::spec)
                .distinct()
                .toList();
    }
}
