package gudgeon.app.desk;

import gudgeon.core.session.Window;
import java.time.Duration;
import java.time.LocalTime;
import java.util.Optional;

/**
 * When a helper or a tool is at hand, said by the clock on the wall: times go on past midnight, and a time that is past means
 * that it is there already. What would last longer than {@link #LONGEST} was meant the other way round.
 */
public final class AtHand {
    /** Nobody helps for longer. */
    public static final Duration LONGEST = Duration.ofHours(12);

    private static final long DAY = Duration.ofDays(1).toMinutes();

    private AtHand() {}

    /**
     * The window, in minutes from now; empty when it would end before it begins, or ended before now.
     *
     * @param from when it comes; empty when it is there already
     * @param until when it goes; empty when it stays
     */
    public static Optional<Window> window(
            String need, LocalTime now, Optional<LocalTime> from, Optional<LocalTime> until) {
        if (until.isEmpty()) {
            long comes = from.map(time -> ahead(now, time)).orElse(0L);
            return Optional.of(new Window(need, here(comes) ? 0 : comes, TodayQuestion.LONGEST));
        }
        long goes = ahead(now, until.get());
        long lasts = from.map(time -> ahead(time, until.get())).orElse(goes);
        boolean possible = lasts > 0 && lasts <= LONGEST.toMinutes();
        return possible ? Optional.of(new Window(need, Math.max(0, goes - lasts), goes)) : Optional.empty();
    }

    /** Whether a time that many minutes ahead is rather one that is past. */
    private static boolean here(long ahead) {
        return DAY - ahead <= LONGEST.toMinutes();
    }

    /** Minutes until the clock shows a time next: 0 to a day less a minute. */
    private static long ahead(LocalTime now, LocalTime then) {
        return Math.floorMod(Duration.between(now, then).toMinutes(), DAY);
    }
}
