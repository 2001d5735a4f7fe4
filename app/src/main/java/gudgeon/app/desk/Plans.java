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
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/**
 * Answers that were worked out already, by what they are a function of: the text of an engine file, a request. The same
 * question has the same answer, so nothing here is ever out of date. Safe for several threads: what two of them ask at once is
 * worked out once. A thread that was interrupted begins no plan ({@link CancellationException}).
 */
final class Plans {
    private static final int MOST = 128;

    private final Map<Object, FutureTask<?>> known = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Object, FutureTask<?>> eldest) {
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
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException("nobody asks for it any more");
        }
        FutureTask<T> mine = new FutureTask<>(work::get);
        FutureTask<?> there;
        synchronized (known) {
            there = known.putIfAbsent(key, mine);
        }
        if (there == null) {
            mine.run();
        }
        FutureTask<?> task = there == null ? mine : there;
        try {
            return type.cast(task.get());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("nobody asks for it any more");
        } catch (ExecutionException e) {
            synchronized (known) {
                known.remove(key, task);
            }
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException("it could not be worked out", e);
        }
    }
}
