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
import java.util.function.BiPredicate;
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
    private final BiPredicate<K, K> outdates;
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
        this(workers, patience, (fresh, old) -> false);
    }

    /**
     * A room that drops what nobody needs any more: when a question comes that outdates others, those that wait are never
     * begun, and those at work are interrupted; they stop between two plans, and are done anew when they are asked again.
     *
     * @param outdates whether the first question makes the answer to the second one worthless
     */
    public Workroom(int workers, Duration patience, BiPredicate<K, K> outdates) {
        this.outdates = outdates;
        this.hands = Executors.newFixedThreadPool(
                workers, Thread.ofPlatform().daemon().name("workroom-", 0).factory());
        this.patience = patience;
    }

    /**
     * The answer, or empty when it is still being worked out, or was dropped because something newer was asked.
     *
     * @throws IllegalStateException when working it out failed
     */
    public Optional<V> ask(K question, Supplier<V> work) {
        Future<V> answer;
        synchronized (known) {
            if (!known.containsKey(question)) {
                drop(question);
            }
            answer = known.computeIfAbsent(question, key -> hands.submit(work::get));
        }
        try {
            return Optional.of(answer.get(patience.toMillis(), TimeUnit.MILLISECONDS));
        } catch (TimeoutException e) {
            return Optional.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        } catch (CancellationException e) {
            return Optional.empty();
        } catch (ExecutionException e) {
            synchronized (known) {
                known.remove(question, answer);
            }
            if (e.getCause() instanceof CancellationException) {
                return Optional.empty();
            }
            throw new IllegalStateException("it could not be worked out: " + question, e);
        }
    }

    /** Gives up what a fresh question outdates and is not worked out yet. */
    private void drop(K fresh) {
        known.entrySet().removeIf(entry -> {
            boolean old = !entry.getValue().isDone() && outdates.test(fresh, entry.getKey());
            if (old) {
                entry.getValue().cancel(true);
            }
            return old;
        });
    }

    @Override
    public void close() {
        hands.shutdownNow();
    }
}
