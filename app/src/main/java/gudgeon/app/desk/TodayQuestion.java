package gudgeon.app.desk;

import gudgeon.core.session.SessionRequest;
import gudgeon.core.session.Window;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * I have so many minutes: how far do I get, and how is it left?
 *
 * @param minutes the time there is
 * @param chance with which the safe stop must be reached
 * @param keep minutes kept to close up; empty when worked out from what stands open
 * @param without tools that are not there today, and ways of lifting (helper, hoist); as the file writes them
 * @param first parts to be reached before anything else, because somebody else waits for them; ids or names
 * @param windows when a helper or a tool is at hand, in minutes from now
 * @param pastDark whether to go on after sunset although it is outdoors
 */
public record TodayQuestion(
        double minutes,
        double chance,
        OptionalDouble keep,
        List<String> without,
        List<String> first,
        List<Window> windows,
        boolean pastDark) {
    /** Shorter is no session. */
    public static final int SHORTEST = 5;

    /** Longer is no day. */
    public static final int LONGEST = 1440;

    public TodayQuestion {
        without = List.copyOf(without);
        first = List.copyOf(first);
        windows = List.copyOf(windows);
        if (!(minutes >= SHORTEST && minutes <= LONGEST)) {
            throw new IllegalArgumentException(
                    "a session has " + SHORTEST + " to " + LONGEST + " minutes, not " + minutes);
        }
    }

    /** So many minutes, and everything as usual. */
    public static TodayQuestion of(double minutes) {
        return new TodayQuestion(
                minutes, SessionRequest.USUAL_CHANCE, OptionalDouble.empty(), List.of(), List.of(), List.of(), false);
    }

    /** The answer. */
    public sealed interface Reply {
        /** A card for today. */
        record Planned(Today today) implements Reply {}

        /** There is nothing to plan: no target, no plan, or all is done. The stage of the job says which. */
        record Nothing(Job.Stage stage) implements Reply {}

        /** Some words name nothing. */
        record Unknown(List<UnknownName> names) implements Reply {
            public Unknown {
                names = List.copyOf(names);
            }
        }
    }

    /** @param now when the session begins */
    public Reply ask(Job job, OffsetDateTime now) {
        NameSearch names = new NameSearch(job.engine());
        List<String> parts = names.parts(first);
        if (!names.unknown().isEmpty()) {
            return new Reply.Unknown(names.unknown());
        }
        Job.Stage stage = job.stage();
        return switch (stage) {
            case NO_TARGET, STUCK, TOGETHER -> new Reply.Nothing(stage);
            case STRIPPING -> new Reply.Planned(new TodayStrip(job, this, parts, light(job, now), now).plan());
            case STRIPPED, BUILDING -> new Reply.Planned(new TodayBuild(job, this, light(job, now), now).plan());
        };
    }

    private static Optional<Today.Light> light(Job job, OffsetDateTime now) {
        return Daylight.place(job)
                .map(place -> new Today.Light(Daylight.at(now, place.latitude(), place.longitude()), place.outdoors()));
    }

    /** The time there is before it is dark where it matters. */
    double timeThereIs(Optional<Today.Light> light, OffsetDateTime now) {
        if (pastDark) {
            return minutes;
        }
        return light.filter(Today.Light::outdoors)
                .flatMap(there -> there.day().sets())
                .filter(now::isBefore)
                .map(sets -> Math.min(minutes, Duration.between(now, sets).toMinutes()))
                .orElse(minutes);
    }
}
