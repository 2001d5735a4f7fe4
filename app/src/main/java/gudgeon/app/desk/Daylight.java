package gudgeon.app.desk;

import gudgeon.core.book.JobState;
import gudgeon.core.book.Setup;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.Optional;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SunriseResult.AllDay;
import net.e175.klaus.solarpositioning.SunriseResult.RegularDay;

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
        ZonedDateTime day = moment.toZonedDateTime();
        double delta_s = DeltaT.estimate(moment.toLocalDate());
        return switch (SPA.calculateSunriseTransitSet(day, latitude, longitude, delta_s)) {
            case RegularDay sun ->
                new Daylight(
                        Optional.of(sun.sunrise().toOffsetDateTime()),
                        Optional.of(sun.sunset().toOffsetDateTime()),
                        false);
            case AllDay _ -> new Daylight(Optional.empty(), Optional.empty(), true);
            default -> new Daylight(Optional.empty(), Optional.empty(), false);
        };
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
