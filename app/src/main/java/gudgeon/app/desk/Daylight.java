package gudgeon.app.desk;

import gudgeon.core.book.JobState;
import gudgeon.core.book.Setup;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shredzone.commons.suncalc.SunTimes;

/**
 * The light of one day at one place: from the sun's upper limb showing to its vanishing, usual refraction, a free horizon.
 * Worked out by a library of general astronomy; checked against published times.
 *
 * @param rises empty when it does not rise that day
 * @param sets empty when it does not set that day
 * @param always whether it is up all day
 */
public record Daylight(Optional<OffsetDateTime> rises, Optional<OffsetDateTime> sets, boolean always) {
    /**
     * The light of the day that has a moment in it.
     *
     * @param latitude degrees, north positive
     * @param longitude degrees, east positive
     */
    public static Daylight at(OffsetDateTime moment, double latitude, double longitude) {
        SunTimes sun = SunTimes.compute()
                .on(moment.toLocalDate())
                .timezone(moment.getOffset())
                .at(latitude, longitude)
                .oneDay()
                .execute();
        return new Daylight(offset(sun.getRise()), offset(sun.getSet()), sun.isAlwaysUp());
    }

    private static Optional<OffsetDateTime> offset(@Nullable ZonedDateTime time) {
        return Optional.ofNullable(time).map(ZonedDateTime::toOffsetDateTime);
    }

    /** The place that was told last; empty when none was. */
    public static Optional<Setup.PlaceSet> place(Job job) {
        return job.state().history().stream()
                .filter(JobState.Told::counts)
                .map(told -> told.entry().body())
                .filter(Setup.PlaceSet.class::isInstance)
                .map(Setup.PlaceSet.class::cast)
                .reduce((first, second) -> second);
    }
}
