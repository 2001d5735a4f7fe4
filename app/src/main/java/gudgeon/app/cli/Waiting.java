package gudgeon.app.cli;

import java.time.Duration;
import java.util.function.Supplier;

/** Shows on a live screen that long work is going on, and for how long; nothing for work of less than a second. */
final class Waiting {
    private static final Duration BEAT = Duration.ofSeconds(1);

    private Waiting() {}

    static <T> T on(Screen screen, String doing, Supplier<T> work) {
        if (!screen.live()) {
            return work.get();
        }
        Thread clock = Thread.ofPlatform().daemon().start(() -> tick(screen, doing));
        try {
            return work.get();
        } finally {
            clock.interrupt();
            try {
                clock.join(BEAT);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private static void tick(Screen screen, String doing) {
        int seconds = 0;
        try {
            while (true) {
                Thread.sleep(BEAT);
                seconds++;
                screen.err().print("\r" + doing + " ... " + seconds + " s ");
                screen.err().flush();
            }
        } catch (InterruptedException e) {
            if (seconds > 0) {
                screen.err().print("\r" + " ".repeat(doing.length() + 12) + "\r");
                screen.err().flush();
            }
        }
    }
}
