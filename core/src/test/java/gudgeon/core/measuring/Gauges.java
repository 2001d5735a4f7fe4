package gudgeon.core.measuring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Invented instruments and readings for tests. */
final class Gauges {
    static final Expanding STEEL = Expanding.of(Material.GAUGE_STEEL);
    static final Expanding IRON = Expanding.of(Material.GRAY_CAST_IRON);
    static final Instrument BORE_GAUGE =
            new Instrument("bore gauge", 0.001, 0.003, new TwoLimits(50, 160), STEEL, Optional.empty());
    static final Instrument MICROMETER =
            new Instrument("micrometer", 0.001, 0.002, new TwoLimits(25, 75), STEEL, Optional.empty());

    private Gauges() {}

    static Reading.Worth read(Instrument instrument, String place, Repeatability before, double... shown) {
        return new Reading(place, Arrays.stream(shown).boxed().toList(), instrument, Conditions.soaked(20, IRON))
                .worth(before);
    }

    /** Sizes by depth and direction, in the order of the rows. */
    static SizeSurvey survey(
            Instrument instrument,
            String name,
            Repeatability before,
            double[] depths,
            String[] directions,
            double... sizes) {
        List<SizeReading> readings = new ArrayList<>();
        for (int i = 0; i < sizes.length; i++) {
            double depth = depths[i / directions.length];
            String direction = directions[i % directions.length];
            String place = name + ", " + depth + ", " + direction;
            readings.add(new SizeReading(depth, direction, read(instrument, place, before, sizes[i])));
        }
        return new SizeSurvey(readings);
    }
}
