package gudgeon.app.desk;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Level;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.finding.OpeningCosts;
import gudgeon.core.planning.StripPlan;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What opening an engine costs, level by level, from the plans that reach the parts of each level of its file; the way back is
 * counted like the way in. A level that the file does not name, or that has no plan, costs what is typical.
 */
final class OpeningLevels {
    private static final double WAY_IN_AND_BACK = 2;

    private OpeningLevels() {}

    static OpeningCosts of(Engine engine) {
        OpeningCosts typical = OpeningCosts.TYPICAL;
        if (engine.rules().levels().isEmpty()) {
            return typical;
        }
        OptionalDouble covers = minutes(engine, Level.Depth.COVERS);
        OptionalDouble head = minutes(engine, Level.Depth.HEAD_OFF);
        OptionalDouble bottom = minutes(engine, Level.Depth.BOTTOM_END);
        double toCovers = covers.orElse(typical.covers());
        double toHead = Math.max(toCovers, head.orElse(toCovers + typical.headOff()));
        double toBottom = Math.max(toHead, bottom.orElse(toHead + typical.bottomEnd()));
        boolean all = covers.isPresent() && head.isPresent() && bottom.isPresent();
        return new OpeningCosts(toCovers, toHead - toCovers, toBottom - toHead, !all);
    }

    private static OptionalDouble minutes(Engine engine, Level.Depth depth) {
        List<String> parts = engine.rules().levels().stream()
                .filter(level -> level.depth() == depth)
                .flatMap(level -> level.parts().stream())
                .toList();
        if (parts.isEmpty()) {
            return OptionalDouble.empty();
        }
        List<String> ways =
                engine.workplace().waysOfLifting().stream().map(LiftingWay::name).toList();
        StripQuestion question = new StripQuestion(
                engine,
                new StripQuestion.Goal(parts, List.of(), List.of(), List.of()),
                StripQuestion.Found.NOTHING,
                new StripQuestion.Means(ways, 0, 1));
        return switch (question.ask()) {
            case StripQuestion.Reply.Planned planned -> {
                StripPlan plan = planned.plan();
                yield OptionalDouble.of(plan.totalSeconds() / 60.0 * WAY_IN_AND_BACK);
            }
            case StripQuestion.Reply.Stuck stuck -> OptionalDouble.empty();
            case StripQuestion.Reply.Unknown unknown -> OptionalDouble.empty();
        };
    }
}
