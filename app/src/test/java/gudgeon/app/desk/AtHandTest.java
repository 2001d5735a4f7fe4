package gudgeon.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Times by the clock on the wall, counted by hand. */
class AtHandTest {
    @ParameterizedTest
    @CsvSource(value = {
        // now, from, until, minutes from now
        "14:00, 14:30, 16:00, 30-120",
        "14:00, 08:00, 16:00, 0-120",
        "22:00, 00:30, 02:00, 150-240",
        "22:00, 21:00, 01:00, 0-180",
        "23:50, '', 00:20, 0-30",
        "23:50, 00:20, '', 30-1440",
        "14:00, 13:00, '', 0-1440",
        "14:00, 16:00, 14:30, none",
        "14:00, 15:00, 15:00, none",
        "14:00, '', 13:00, none"
    })
    void timesGoOnPastMidnight(String now, String from, String until, String minutes) {
        assertThat(AtHand.window("helper", LocalTime.parse(now), time(from), time(until))
                        .map(window -> (int) window.from() + "-" + (int) window.until())
                        .orElse("none"))
                .isEqualTo(minutes);
    }

    private static Optional<LocalTime> time(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(LocalTime.parse(text));
    }
}
