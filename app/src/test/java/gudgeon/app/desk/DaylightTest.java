package gudgeon.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Sunrise and sunset against daylight.csv: times of the US Naval Observatory, to the minute, and of a published solar position
 * algorithm, to the second; each row names its source. Each is met within the row's own tolerance.
 */
class DaylightTest {
    private static final Pattern ROW = Pattern.compile(
            ".*,(sunrise|sunset),\"\\{\"\"date\"\": \"\"([0-9-]+)\"\", \"\"latitude_deg\"\": ([-0-9.]+), \"\"longitude_deg\"\": ([-0-9.]+), \"\"utc_offset_h\"\": ([-0-9]+)\\}\",([0-9]+),([0-9.]+),.*");

    @Test
    void sunriseAndSunsetAsPublished() throws IOException {
        int rows = 0;
        for (String line : lines()) {
            Matcher row = ROW.matcher(line);
            if (!row.matches()) {
                continue;
            }
            rows++;
            ZoneOffset offset = ZoneOffset.ofHours(Integer.parseInt(row.group(5)));
            LocalDate date = LocalDate.parse(row.group(2));
            Daylight day = Daylight.at(
                    OffsetDateTime.of(date, LocalTime.NOON, offset),
                    Double.parseDouble(row.group(3)),
                    Double.parseDouble(row.group(4)));
            OffsetDateTime is = (row.group(1).equals("sunrise") ? day.rises() : day.sets()).orElseThrow();
            OffsetDateTime want =
                    OffsetDateTime.of(date, LocalTime.ofSecondOfDay(Long.parseLong(row.group(6))), offset);
            long off = Math.abs(Duration.between(is, want).toSeconds());
            assertThat(off)
                    .as(line.substring(0, 40) + " is " + is)
                    .isLessThanOrEqualTo(Math.round(Double.parseDouble(row.group(7))));
        }
        assertThat(rows).isEqualTo(22);
    }

    @Test
    void theFarNorthHasNeitherOrBoth() {
        Daylight june = Daylight.at(OffsetDateTime.parse("2026-06-21T12:00:00+02:00"), 70, 20);
        assertThat(june.always()).isTrue();
        assertThat(june.sets()).isEmpty();
        Daylight december = Daylight.at(OffsetDateTime.parse("2026-12-21T12:00:00+01:00"), 70, 20);
        assertThat(december.always()).isFalse();
        assertThat(december.rises()).isEmpty();
    }

    @Test
    void aTenthOfADegreeIsEnough() {
        OffsetDateTime noon = OffsetDateTime.parse("2026-11-21T12:00:00Z");
        Daylight exact = Daylight.at(noon, 52.449, -1.251);
        Daylight rounded = Daylight.at(noon, 52.4, -1.3);
        assertThat(Duration.between(exact.sets().orElseThrow(), rounded.sets().orElseThrow())
                        .abs()
                        .toSeconds())
                .isLessThan(60);
    }

    private static List<String> lines() throws IOException {
        try (InputStream in =
                Objects.requireNonNull(DaylightTest.class.getResourceAsStream("/daylight/daylight.csv"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        }
    }
}
