package gudgeon.core.session;

import java.util.List;
import java.util.Optional;

/**
 * How far a session goes.
 *
 * @param stops where one could stop: after no step, after the first, ... as far as it makes sense to look
 * @param steps how many steps are done until the stop that is recommended
 * @param ended why no more are
 * @param about what {@code ended} is about: ids of steps or names of needs; may be empty
 */
public record SessionPlan(List<Stop> stops, int steps, Ended ended, List<String> about) {
    public SessionPlan {
        stops = List.copyOf(stops);
        about = List.copyOf(about);
        if (steps < 0 || steps >= stops.size()) {
            throw new IllegalArgumentException("the recommended stop is one of the stops, not " + steps);
        }
    }

    /**
     * A place where one could stop.
     *
     * @param steps after how many steps
     * @param stand how it would be left
     * @param closeMinutes minutes to close up
     * @param riskyLast whether the last work before it is what is likely to be seized
     * @param independent the forecast when delays have nothing to do with each other
     * @param together the forecast when they all go together
     */
    public record Stop(
            int steps, Stand stand, double closeMinutes, boolean riskyLast, Forecast independent, Forecast together) {
        /** Whether one may stop there at all. */
        public boolean mayStop() {
            return stand.isSafe() && !riskyLast;
        }

        /** Whether both forecasts reach it with a chance. */
        public boolean fits(double chance) {
            return mayStop() && independent.within() >= chance && together.within() >= chance;
        }
    }

    /**
     * When the work up to a stop is done, in minutes from the start of the session, closing up not counted.
     *
     * @param within the chance that it is closed up within the time there is
     */
    public record Forecast(double p10, double p50, double p80, double p90, double within) {}

    /** Why a session goes no further. */
    public enum Ended {
        /** All steps fit. */
        ALL_DONE,
        /** The next safe stop is not reached with the chance that is asked for. */
        TIME,
        /** What the next step needs is not at hand then. */
        NOT_AT_HAND,
        /** It stands unsafe now: the first safe stop comes first, whatever it takes. */
        UNSAFE_NOW
    }

    /** The stop that is recommended. */
    public Stop stop() {
        return stops.get(steps);
    }

    /** The furthest stop that fits by one of the two forecasts alone, when that is further than the one recommended. */
    public Optional<Stop> bolder(double chance) {
        return stops.stream()
                .filter(stop -> stop.steps() > steps && stop.mayStop())
                .filter(stop ->
                        stop.independent().within() >= chance || stop.together().within() >= chance)
                .reduce((first, second) -> second);
    }
}
