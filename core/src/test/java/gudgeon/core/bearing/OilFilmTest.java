package gudgeon.core.bearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The film against limits that are known in closed form; Raimondi and Boyd's rows are checked with the measurements. */
class OilFilmTest {
    /**
     * A very short bush: Ocvirk's solution S (L/D)² = (1−ε²)² / (π ε √(π²(1−ε²)+16ε²)) and tan φ = π√(1−ε²)/(4ε). Source:
     * Dubois and Ocvirk, NACA report 1157 (1953), from memory.
     */
    @Test
    void aShortBushIsAsInClosedForm() {
        for (double eccentricity : new double[] {0.2, 0.5, 0.7}) {
            OilFilm film = OilFilm.at(0.05, eccentricity);
            double left = 1 - eccentricity * eccentricity;
            double wanted = left
                    * left
                    / (Math.PI
                            * eccentricity
                            * Math.sqrt(Math.PI * Math.PI * left + 16 * eccentricity * eccentricity));
            assertThat(film.sommerfeld() * 0.05 * 0.05).isCloseTo(wanted, within(0.02 * wanted));
            assertThat(film.attitude_deg())
                    .isCloseTo(
                            Math.toDegrees(Math.atan(Math.PI * Math.sqrt(left) / (4 * eccentricity))), within(1.0));
        }
    }

    @Test
    void theFilmOfALoadIsTheFilmOfItsEccentricity() {
        OilFilm film = OilFilm.at(0.5, 0.62);
        assertThat(OilFilm.carrying(0.5, film.sommerfeld()).eccentricityRatio()).isCloseTo(0.62, within(1e-4));
    }

    @Test
    void whatIsOutOfRangeIsRefused() {
        assertThatThrownBy(() -> OilFilm.at(1, 1)).hasMessageContaining("eccentricity");
        assertThatThrownBy(() -> OilFilm.carrying(1, 1e9)).hasMessageContaining("another unit");
        assertThatThrownBy(() -> ToleranceZone.parse("7H")).hasMessageContaining("H7 or g6");
    }
}
