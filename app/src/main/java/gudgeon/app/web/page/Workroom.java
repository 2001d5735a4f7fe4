package gudgeon.app.web.page;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;

/**
 * Long computing that must not hold up a page: it goes on in the background, a page waits a little for it and otherwise says
 * that it is being worked out. The latest answers are kept. Keys need equality by value.
 *
 * @param <K> what is asked
 * @param <V> the answer
 */
public final class Workroom<K, V> implements AutoCloseable {
    private static final int MOST_KEPT = 60;

    private final ExecutorService hands;
    private final Duration patience;
    private final Map<K, Future<V>> known = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<K, Future<V>> eldest) {
            return size() > MOST_KEPT;
        }
    };

    /**
     * @param workers how many are worked out at once
     * @param patience how long a page waits
     */
    public Workroom(int workers, Duration patience) {
        this.hands = Executors.newFixedThreadPool(
                workers, Thread.ofPlatform().daemon().name("workroom-", 0).factory());
        this.patience = patience;
    }

    /**
     * The answer, or empty when it is still being worked out.
     *
     * @throws IllegalStateException when working it out failed
     */
    public Optional<V> ask(K question, Supplier<V> work) {
        Future<V> answer;
        synchronized (known) {
            answer = known.computeIfAbsent(question, key -> hands.submit(work::get));
        }
        try {
            return Optional.of(answer.get(patience.toMillis(), TimeUnit.MILLISECONDS));
        } catch (TimeoutException e) {
            return Optional.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        } catch (ExecutionException | CancellationException e) {
            synchronized (known) {
                known.remove(question, answer);
            }
            throw new IllegalStateException("it could not be worked out: " + question, e);
        }
    }

    @Override
    public void close() {
        hands.shutdownNow();
    }
}
