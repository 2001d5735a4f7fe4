package gudgeon.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.app.web.page.Workroom;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** One worker, and a job that goes on while its plans are worked out: old ones must not hold up the new one. */
@Timeout(20)
class WorkroomTest {
    private record Standing(String job, long seq) {}

    private static Workroom<Standing, String> room(Duration patience) {
        return new Workroom<>(1, patience, (fresh, old) -> fresh.job().equals(old.job()) && fresh.seq() > old.seq());
    }

    /** Works until it is interrupted, as a plan does between two of its parts. */
    private static String forever(CountDownLatch begun) {
        begun.countDown();
        try {
            new CountDownLatch(1).await();
            return "never";
        } catch (InterruptedException e) {
            throw new CancellationException("nobody asks for it any more");
        }
    }

    @Test
    void whatANewerEntryOutdatesStopsAndWhatWaitedNeverBegins() throws Exception {
        AtomicInteger needless = new AtomicInteger();
        CountDownLatch begun = new CountDownLatch(1);
        try (Workroom<Standing, String> room = room(Duration.ofMillis(50))) {
            assertThat(room.ask(new Standing("barn", 1), () -> forever(begun))).isEmpty();
            assertThat(begun.await(10, TimeUnit.SECONDS)).isTrue();
            assertThat(room.ask(new Standing("barn", 2), () -> "second " + needless.incrementAndGet()))
                    .as("the second is worked out as soon as the first has stopped")
                    .isPresent();
            CountDownLatch again = new CountDownLatch(1);
            room.ask(new Standing("barn", 3), () -> forever(again));
            assertThat(again.await(10, TimeUnit.SECONDS)).isTrue();
            room.ask(new Standing("shed", 1), () -> "shed " + needless.incrementAndGet());
            for (int seq = 4; seq < 9; seq++) {
                int n = seq;
                room.ask(new Standing("barn", seq), () -> "barn " + n);
            }
            Optional<String> last = Optional.empty();
            while (last.isEmpty()) {
                last = room.ask(new Standing("barn", 8), () -> "barn 8");
            }
            assertThat(last).contains("barn 8");
            assertThat(room.ask(new Standing("shed", 1), () -> "shed " + needless.incrementAndGet()))
                    .as("another job keeps its turn")
                    .contains("shed 2");
        }
    }

    @Test
    void whoeverWaitsForWhatWasDroppedIsToldToAskAgain() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        try (Workroom<Standing, String> room = room(Duration.ofSeconds(10))) {
            Optional<?>[] answer = new Optional<?>[1];
            Thread page = Thread.ofVirtual()
                    .start(() -> answer[0] = room.ask(new Standing("barn", 1), () -> forever(begun)));
            assertThat(begun.await(10, TimeUnit.SECONDS)).isTrue();
            assertThat(room.ask(new Standing("barn", 2), () -> "two")).contains("two");
            page.join();
            assertThat(answer[0]).isEqualTo(Optional.empty());
            assertThat(room.ask(new Standing("barn", 1), () -> "one, asked again")).contains("one, asked again");
        }
    }

    @Test
    void anOlderQuestionDropsNothing() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch go = new CountDownLatch(1);
        try (Workroom<Standing, String> room = room(Duration.ofMillis(50))) {
            room.ask(new Standing("barn", 5), () -> {
                begun.countDown();
                try {
                    go.await();
                } catch (InterruptedException e) {
                    throw new CancellationException("dropped");
                }
                return "five";
            });
            assertThat(begun.await(10, TimeUnit.SECONDS)).isTrue();
            assertThat(room.ask(new Standing("barn", 4), () -> "four")).isEmpty();
            go.countDown();
            Optional<String> five = Optional.empty();
            while (five.isEmpty()) {
                five = room.ask(new Standing("barn", 5), () -> "worked out anew");
            }
            assertThat(five).contains("five");
        }
    }
}
