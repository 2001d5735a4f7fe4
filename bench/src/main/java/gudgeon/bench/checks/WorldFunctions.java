package gudgeon.bench.checks;

import static gudgeon.bench.checks.Computation.one;

import gudgeon.app.desk.Daylight;
import gudgeon.app.format.UnitFactor;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import net.e175.klaus.solarpositioning.JulianDate;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;

/** Units and daylight, as the program's own edges have them. */
final class WorldFunctions {
    private WorldFunctions() {}

    static void into(Map<String, Computation> all) {
        all.put("unit_factor", one(args -> UnitFactor.of(args.text("from"), args.text("to"))));
        all.put("sunrise", one(args -> seconds(args, Daylight::rises)));
        all.put("sunset", one(args -> seconds(args, Daylight::sets)));
        all.put("julian_day", one(args -> new JulianDate(moment(args), 0).julianDate()));
        all.put("sun_zenith", one(args -> position(args).zenithAngle()));
        all.put("sun_azimuth", one(args -> position(args).azimuth()));
        all.put("sun_elevation_apparent", one(args -> 90 - position(args).zenithAngle()));
        all.put("sun_elevation_true", one(args -> 90 - withoutAir(args).zenithAngle()));
    }

    private static ZonedDateTime moment(Args args) {
        return LocalDateTime.parse(args.text("local_time")).atZone(offset(args));
    }

    private static ZoneOffset offset(Args args) {
        return ZoneOffset.ofTotalSeconds((int) Math.round(args.number("utc_offset_h") * 3600));
    }

    /** The sun as it is seen; the library takes the refraction at the horizon for granted, which matters only there. */
    private static SolarPosition position(Args args) {
        return SPA.calculateSolarPosition(
                moment(args),
                args.number("latitude_deg"),
                args.number("longitude_deg"),
                args.number("elevation_m"),
                args.number("delta_t_s"),
                args.number("pressure_hPa"),
                args.number("temperature_C"));
    }

    private static SolarPosition withoutAir(Args args) {
        return SPA.calculateSolarPosition(
                moment(args),
                args.number("latitude_deg"),
                args.number("longitude_deg"),
                args.number("elevation_m"),
                args.number("delta_t_s"));
    }

    private static double seconds(Args args, Function<Daylight, Optional<OffsetDateTime>> when) {
        ZoneOffset offset = offset(args);
        OffsetDateTime noon = LocalDate.parse(args.text("date")).atTime(LocalTime.NOON).atOffset(offset);
        Daylight light = Daylight.at(noon, args.number("latitude_deg"), args.number("longitude_deg"));
        return when.apply(light)
                .map(time -> (double) time.withOffsetSameInstant(offset).toLocalTime().toSecondOfDay())
                .orElseThrow(() -> new IllegalArgumentException("the sun does not do so on that day"));
    }
}
