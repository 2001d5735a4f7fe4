package gudgeon.core.measuring;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A cam lobe from follower readings over a turn.
 *
 * @param lift_mm highest reading less the mean of the base circle
 * @param top_deg angle of the highest reading
 * @param baseRunOut_mm range of the readings on the base circle
 * @param base_mm their mean
 * @param readings by angle, from 0 to below 360
 */
public record CamLobe(double lift_mm, double top_deg, double baseRunOut_mm, double base_mm, List<Turn.Dial> readings) {
    public CamLobe {
        readings = List.copyOf(readings);
    }

    /**
     * The lobe of some readings.
     *
     * @param readings at least eight
     * @param baseFrom_deg where the base circle begins, in the sense of the angles
     * @param baseTo_deg where it ends
     */
    public static CamLobe of(List<Turn.Dial> readings, double baseFrom_deg, double baseTo_deg) {
        if (readings.size() < 8) {
            throw new IllegalArgumentException("a lobe needs eight readings or more, not " + readings.size());
        }
        double span = Angles.turn(baseTo_deg - baseFrom_deg);
        double[] base = readings.stream()
                .filter(dial -> Angles.turn(dial.angle_deg() - baseFrom_deg) <= span)
                .mapToDouble(Turn.Dial::height_mm)
                .toArray();
        if (base.length < 2) {
            throw new IllegalArgumentException("fewer than two readings lie on the base circle, from " + baseFrom_deg
                    + " to " + baseTo_deg + " degrees");
        }
        Sample sample = Sample.of(base);
        Turn.Dial top = readings.stream()
                .max(Comparator.comparingDouble(Turn.Dial::height_mm))
                .orElseThrow();
        List<Turn.Dial> sorted = readings.stream()
                .map(dial -> new Turn.Dial(Angles.turn(dial.angle_deg()), dial.height_mm()))
                .sorted(Comparator.comparingDouble(Turn.Dial::angle_deg))
                .toList();
        return new CamLobe(
                top.height_mm() - sample.mean(), Angles.turn(top.angle_deg()), sample.range(), sample.mean(), sorted);
    }

    /** How many degrees of the cam the follower is lifted by more than an amount; by straight lines between readings. */
    public OptionalDouble duration_deg(double lift_mm) {
        OptionalDouble opens = crossing(lift_mm, -1);
        OptionalDouble closes = crossing(lift_mm, 1);
        return opens.isPresent() && closes.isPresent()
                ? OptionalDouble.of(opens.getAsDouble() + closes.getAsDouble())
                : OptionalDouble.empty();
    }

    /** The middle between the two flanks at an amount of lift: the lobe's centre. */
    public OptionalDouble centre_deg(double lift_mm) {
        OptionalDouble opens = crossing(lift_mm, -1);
        OptionalDouble closes = crossing(lift_mm, 1);
        return opens.isPresent() && closes.isPresent()
                ? OptionalDouble.of(Angles.turn(top_deg + (closes.getAsDouble() - opens.getAsDouble()) / 2))
                : OptionalDouble.empty();
    }

    /** How far from the top, one way round, the lift falls to an amount. */
    private OptionalDouble crossing(double lift_mm, int way) {
        int size = readings.size();
        int at = 0;
        while (readings.get(at).angle_deg() != top_deg) {
            at++;
        }
        for (int step = 0; step < size; step++) {
            Turn.Dial here = readings.get(Math.floorMod(at + way * step, size));
            Turn.Dial next = readings.get(Math.floorMod(at + way * (step + 1), size));
            double low = next.height_mm() - base_mm - lift_mm;
            double high = here.height_mm() - base_mm - lift_mm;
            if (high >= 0 && low < 0) {
                double gone = Angles.turn(way * (here.angle_deg() - top_deg));
                double width = Angles.turn(way * (next.angle_deg() - here.angle_deg()));
                return OptionalDouble.of(gone + width * high / (high - low));
            }
        }
        return OptionalDouble.empty();
    }
}
