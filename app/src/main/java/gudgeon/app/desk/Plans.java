package gudgeon.app.desk;

import gudgeon.app.format.EngineFile;
import gudgeon.app.format.EngineText;
import gudgeon.app.format.Reading;
import gudgeon.core.engine.Engine;
import gudgeon.core.planning.BuildPlan;
import gudgeon.core.planning.BuildPlanner;
import gudgeon.core.planning.BuildRequest;
import gudgeon.core.planning.StripAnswer;
import gudgeon.core.planning.StripPlanner;
import gudgeon.core.planning.StripRequest;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Answers that were worked out already, by what they are a function of: the text of an engine file, a request. The same
 * question has the same answer, so nothing here is ever out of date. Safe for several threads.
 */
final class Plans {
    private static final int MOST = 128;

    private final Map<Object, Object> known = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Object, Object> eldest) {
            return size() > MOST;
        }
    };

    private record FileKey(String sha256) {}

    private record StripKey(String sha256, StripRequest request) {}

    private record BuildKey(String sha256, BuildRequest request) {}

    Reading reading(String name, String text) {
        return once(
                new FileKey(EngineText.sha256(text)),
                Reading.class,
                () -> EngineFile.read(name, text.getBytes(StandardCharsets.UTF_8)));
    }

    StripAnswer strip(Engine engine, StripRequest request) {
        return once(
                new StripKey(engine.identity().sha256(), request),
                StripAnswer.class,
                () -> StripPlanner.plan(engine, request));
    }

    BuildPlan build(Engine engine, BuildRequest request) {
        return once(
                new BuildKey(engine.identity().sha256(), request),
                BuildPlan.class,
                () -> BuildPlanner.plan(engine, request));
    }

    private <T> T once(Object key, Class<T> type, Supplier<T> work) {
        synchronized (known) {
            Object there = known.get(key);
            if (there != null) {
                return type.cast(there);
            }
        }
        T fresh = work.get();
        synchronized (known) {
            known.put(key, fresh);
        }
        return fresh;
    }
}
