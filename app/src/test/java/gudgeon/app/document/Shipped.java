package gudgeon.app.document;

import gudgeon.app.format.EngineFile;
import gudgeon.app.format.Reading;
import gudgeon.app.format.ShippedEngines;
import gudgeon.core.engine.Engine;
import gudgeon.core.planning.StripAnswer;
import gudgeon.core.planning.StripPlan;
import gudgeon.core.planning.StripPlanner;
import gudgeon.core.planning.StripRequest;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;

/** A shipped engine with the plan to take parts off it, for tests. */
record Shipped(Engine engine, StripRequest.Target target, StripPlan plan) {
    static Shipped plan(String id, String... off) {
        return plan(engine(id), off);
    }

    /** The plan for an engine file among the test resources of this package. */
    static Shipped fixture(String file, String... off) throws IOException {
        try (InputStream stream = Shipped.class.getResourceAsStream("/gudgeon/document/" + file)) {
            Reading reading =
                    EngineFile.read(file, Objects.requireNonNull(stream, file).readAllBytes());
            return switch (reading) {
                case Reading.Sound sound -> plan(sound.engine(), off);
                case Reading.Faulty faulty -> throw new AssertionError(faulty.problems());
            };
        }
    }

    private static Shipped plan(Engine engine, String... off) {
        StripRequest request = new StripRequest(
                StripRequest.Target.off(off),
                List.of(),
                List.of(),
                List.of(),
                new StripRequest.Means(engine.workplace().waysOfLifting(), 0, 2_000));
        StripAnswer answer = StripPlanner.plan(engine, request);
        return new Shipped(engine, request.target(), (StripPlan) answer);
    }

    static Engine engine(String id) {
        Reading reading = EngineFile.read(ShippedEngines.find(id).orElseThrow());
        return ((Reading.Sound) reading).engine();
    }
}
