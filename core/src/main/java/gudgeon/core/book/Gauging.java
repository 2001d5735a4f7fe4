package gudgeon.core.book;

import java.util.List;

/** What was read, with what, and how clean it was. */
public sealed interface Gauging extends Body {
    /** Most repeats of one stroke. */
    int MOST_REPEATS = 100;

    /**
     * A place of a feature was read. Several entries on one place are repeats, and all of them count.
     *
     * @param feature id
     * @param place where: depth and direction, line, point; with several alike first which one
     * @param shown_mm what the instrument showed, once or several times
     * @param typed the same as it was typed
     * @param instrument id of an instrument of the toolbox, or the name of a common kind
     * @param warmth_C nothing, or how warm the part was, or that and how warm the setting standard was
     */
    record ReadingTaken(
            String feature, String place, List<Double> shown_mm, String typed, String instrument, List<Double> warmth_C)
            implements Gauging {
        public ReadingTaken {
            shown_mm = List.copyOf(shown_mm);
            warmth_C = List.copyOf(warmth_C);
            Said.something(feature, "what was read");
            Said.something(place, "where it was read");
            Said.something(instrument, "what it was read with");
            if (shown_mm.isEmpty() || shown_mm.size() > MOST_REPEATS) {
                throw new IllegalArgumentException(
                        "a reading shows something, once or up to " + MOST_REPEATS + " times");
            }
            if (shown_mm.stream().anyMatch(shown -> !(Math.abs(shown) <= 10_000))) {
                throw new IllegalArgumentException("a reading lies within ten metres, not at " + shown_mm);
            }
            if (warmth_C.size() > 2 || warmth_C.stream().anyMatch(warmth -> !(warmth > -60 && warmth < 300))) {
                throw new IllegalArgumentException("a part is measured between -60 and 300 °C, not at " + warmth_C);
            }
        }
    }

    /**
     * An instrument of the toolbox; the last word on it holds, in all jobs of one toolbox.
     *
     * @param instrument its name
     * @param resolution_mm the last figure it shows
     * @param maximumError_mm what it may err by
     * @param offset_mm what it showed too much at its last check; 0 when it was not checked
     * @param checked whether it was
     * @param repeatability_mm standard deviation of one's own repeats; 0 when not tried out
     */
    record InstrumentDescribed(
            String instrument,
            double resolution_mm,
            double maximumError_mm,
            double offset_mm,
            boolean checked,
            double repeatability_mm)
            implements Gauging {
        public InstrumentDescribed {
            Said.something(instrument, "an instrument");
            if (!(resolution_mm >= 0 && resolution_mm <= 10 && maximumError_mm > 0 && maximumError_mm <= 10)) {
                throw new IllegalArgumentException(
                        "an instrument shows a figure and errs by more than nothing, at most 10 mm, not "
                                + resolution_mm + " and " + maximumError_mm);
            }
            if (!(Math.abs(offset_mm) <= 10 && repeatability_mm >= 0 && repeatability_mm <= 10)) {
                throw new IllegalArgumentException(
                        "offset and repeats lie within 10 mm, not " + offset_mm + " and " + repeatability_mm);
            }
        }
    }

    /**
     * A part was cleaned.
     *
     * @param part id
     * @param how the method
     * @param passagesClear whether its passages were proven clear; true where it has none
     * @param clothWhite whether a white cloth stayed white
     */
    record Cleaned(String part, String how, boolean passagesClear, boolean clothWhite) implements Gauging {
        public Cleaned {
            Said.something(part, "what was cleaned");
        }
    }

    /** By which edition of the rule readings are judged. @param year 1998 or 2017 */
    record EditionKept(int year) implements Gauging {
        public EditionKept {
            if (year != 1998 && year != 2017) {
                throw new IllegalArgumentException("the edition is 1998 or 2017, not " + year);
            }
        }
    }
}
