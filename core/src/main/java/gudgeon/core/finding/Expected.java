package gudgeon.core.finding;

import gudgeon.core.finding.FindingKind.Path;
import java.util.Arrays;

/** What the gauges show for one condition, worked out once: each figure's mean and scatter, and what is heard where. */
final class Expected {
    private final Condition condition;
    private final Gauges gauges;
    private final double[] compression = new double[2];
    private final double[] leak = new double[2];
    private final double[] current = new double[2];
    private final double[] balance = new double[2];
    private final double[] heard = new double[Path.values().length];
    private final double[] wet = new double[2];
    private double wetOil = Double.NaN;

    Expected(Condition condition, Gauges gauges) {
        this.condition = condition;
        this.gauges = gauges;
        gauges.compression(condition, compression);
        gauges.balance(condition, balance);
        Arrays.fill(heard, Double.NaN);
        leak[0] = Double.NaN;
        current[0] = Double.NaN;
    }

    double[] compression() {
        return compression;
    }

    /** Likelihood of a figure other than compression when the reading is good. */
    double good(CylinderReadings.Figure figure) {
        double[] range = CylinderReadings.range(figure.kind());
        return switch (figure.kind()) {
            case COMPRESSION -> throw new IllegalArgumentException("compression is weighed over the whole grid");
            case WET_RATIO -> ReadingChance.good(figure.value(), wet(figure.detail())[0], wet[1], range);
            case LEAK ->
                ReadingChance.good(figure.value(), leak()[0], Math.hypot(leak[1], figure.detail()), range);
            case CURRENT -> ReadingChance.good(figure.value(), current()[0], current[1], range);
            case BALANCE -> ReadingChance.good(figure.value(), balance[0], balance[1], range);
        };
    }

    double[] wet(double oil) {
        if (oil != wetOil) {
            gauges.wet(condition, oil, wet);
            wetOil = oil;
        }
        return wet;
    }

    double[] leak() {
        if (Double.isNaN(leak[0])) {
            gauges.leak(condition, 0, leak);
        }
        return leak;
    }

    double[] current() {
        if (Double.isNaN(current[0])) {
            gauges.current(condition, current);
        }
        return current;
    }

    double[] balance() {
        return balance;
    }

    double heard(Path path) {
        int at = path.ordinal();
        if (Double.isNaN(heard[at])) {
            heard[at] = gauges.heard(condition, path);
        }
        return heard[at];
    }
}
