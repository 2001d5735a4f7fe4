package gudgeon.core.session;

import gudgeon.core.forecast.OneFate;
import gudgeon.core.forecast.TimeSpread;
import gudgeon.core.forecast.WorkTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * "I have so many minutes": the longest run of steps that ends in a safe stop and is, closing up included, done in time with the
 * chance that is asked for, whether delays are independent or go together. Cost: one convolution for each step looked at.
 */
public final class SessionPlanner {
    /** Points of the grid; it ends at four times the time there is. */
    private static final int CELLS = 8192;

    private static final double HORIZON = 4;

    /** It is not looked further when less than this is left of the chance. */
    private static final double HOPELESS = 0.02;

    private final SessionRequest request;
    private final List<SessionPlan.Stop> stops = new ArrayList<>();
    private List<String> missed = List.of();

    private SessionPlanner(SessionRequest request) {
        this.request = request;
    }

    /** How far a session goes. */
    public static SessionPlan plan(SessionRequest request) {
        return new SessionPlanner(request).plan();
    }

    private SessionPlan plan() {
        look();
        int last = lastThatFits();
        if (last < 0) {
            int first = firstThatIsSafe();
            return new SessionPlan(stops, first, SessionPlan.Ended.UNSAFE_NOW, List.of());
        }
        if (last == request.steps().size()) {
            return new SessionPlan(stops, last, SessionPlan.Ended.ALL_DONE, List.of());
        }
        boolean stopped = !missed.isEmpty() && last == stops.size() - 1;
        return stopped
                ? new SessionPlan(stops, last, SessionPlan.Ended.NOT_AT_HAND, missed)
                : new SessionPlan(
                        stops,
                        last,
                        SessionPlan.Ended.TIME,
                        List.of(request.steps().get(last).id()));
    }

    private void look() {
        TimeSpread.Grid grid = TimeSpread.Grid.upTo(HORIZON * request.minutes(), CELLS);
        TimeSpread independent = TimeSpread.zero(grid);
        OneFate together = OneFate.zero();
        stops.add(stop(0, request.now(), false, independent, together));
        boolean risky = false;
        for (int k = 0; k < request.steps().size(); k++) {
            Step step = request.steps().get(k);
            for (String need : step.needs()) {
                double from = window(need).map(Window::from).orElse(0.0);
                independent = independent.notBefore(from);
                together = together.notBefore(from);
            }
            WorkTime time = request.paces().time(step.nominal());
            independent = independent.plus(TimeSpread.of(time, grid));
            together = together.plus(time);
            missed = missed(step, independent, together);
            if (!missed.isEmpty()) {
                return;
            }
            risky = time.median() > 0 ? time.seizure().chance() >= SessionRequest.RISKY : risky;
            SessionPlan.Stop stop = stop(k + 1, step.after(), risky, independent, together);
            stops.add(stop);
            boolean found = stops.stream().anyMatch(SessionPlan.Stop::mayStop);
            if (found && Math.max(stop.independent().within(), stop.together().within()) < HOPELESS) {
                return;
            }
        }
    }

    private Optional<Window> window(String need) {
        return request.windows().stream()
                .filter(window -> window.need().equals(need))
                .findFirst();
    }

    /** What a step needs that is likely to be gone before it is done. */
    private List<String> missed(Step step, TimeSpread independent, OneFate together) {
        return step.needs().stream()
                .filter(need -> window(need)
                        .filter(window -> independent.within(window.until()) < request.chance()
                                || together.within(window.until()) < request.chance())
                        .isPresent())
                .toList();
    }

    private SessionPlan.Stop stop(int steps, Stand stand, boolean risky, TimeSpread independent, OneFate together) {
        double close = request.closeUp().minutes(stand);
        double time = request.minutes() - close;
        return new SessionPlan.Stop(
                steps,
                stand,
                close,
                risky,
                new SessionPlan.Forecast(
                        independent.quantile(0.1),
                        independent.quantile(0.5),
                        independent.quantile(0.8),
                        independent.quantile(0.9),
                        independent.within(time)),
                new SessionPlan.Forecast(
                        together.quantile(0.1),
                        together.quantile(0.5),
                        together.quantile(0.8),
                        together.quantile(0.9),
                        time < 0 ? 0 : together.within(time)));
    }

    private int lastThatFits() {
        for (int k = stops.size() - 1; k >= 0; k--) {
            if (stops.get(k).fits(request.chance())) {
                return k;
            }
        }
        return stops.getFirst().stand().isSafe() ? 0 : -1;
    }

    private int firstThatIsSafe() {
        for (SessionPlan.Stop stop : stops) {
            if (stop.stand().isSafe()) {
                return stop.steps();
            }
        }
        return stops.size() - 1;
    }
}
