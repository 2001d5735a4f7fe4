package gudgeon.core.finding;

import gudgeon.core.finding.FindingKind.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was seen and measured at one cylinder, ready to be weighed. Figures of one sitting, and what was heard in it, are good or
 * bad together; yes-or-no findings of one test likewise.
 */
record CylinderReadings(List<Figures> figures, List<Answers> answers) {
    CylinderReadings {
        figures = List.copyOf(figures);
        answers = List.copyOf(answers);
    }

    /** Figures of one sitting of one test. */
    record Figures(double bad, List<Figure> values, List<Heard> heard) {
        Figures {
            values = List.copyOf(values);
            heard = List.copyOf(heard);
        }

        /** Likelihood when the sitting was bad. */
        double broad() {
            double broad = Math.pow(0.5, heard.size());
            for (Figure figure : values) {
                double[] range = range(figure.kind());
                broad /= range[1] - range[0];
            }
            return broad;
        }
    }

    /**
     * @param value as the gauges speak: logarithm of Pa for compression, of the ratio, of orifices; plain for the others
     * @param detail oil m³ for the wet ratio; extra scatter for the leak
     */
    record Figure(TestKind.Figure kind, double value, double detail) {}

    record Heard(Path path, boolean there) {}

    /** Answers of one sitting of one test; each finding by its index among the model's cylinder findings. */
    record Answers(double bad, int[] findings, boolean[] there) {
        /** Likelihood with two faults, -1 for none; passes of the engine slice come in one array. */
        double chance(double[] alarms, double[] members, double[][] passes, int f, int g) {
            double good = 1;
            for (int i = 0; i < findings.length; i++) {
                int finding = findings[i];
                double away = (1 - alarms[finding]) * members[finding];
                if (f >= 0) {
                    away *= passes[finding][f];
                }
                if (g >= 0) {
                    away *= passes[finding][g];
                }
                good *= there[i] ? 1 - away : away;
            }
            return (1 - bad) * good + bad * Math.pow(0.5, findings.length);
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Answers(double badly, int[] which, boolean[] said)
                    && badly == bad
                    && java.util.Arrays.equals(which, findings)
                    && java.util.Arrays.equals(said, there);
        }

        @Override
        public int hashCode() {
            return java.util.Arrays.hashCode(findings) * 31 + java.util.Arrays.hashCode(there);
        }

        @Override
        public String toString() {
            return java.util.Arrays.toString(findings) + java.util.Arrays.toString(there);
        }
    }

    boolean any() {
        return !figures.isEmpty() || !answers.isEmpty();
    }

    boolean anyFigure() {
        return !figures.isEmpty();
    }

    /**
     * Likelihood of all figures for a condition, at every point of the healthy grid, times into.
     *
     * @param shift of the logarithm of compression, besides what the condition does to it
     */
    void weigh(Expected expected, double shift, HealthyGrid grid, double[] into) {
        for (Figures sitting : figures) {
            double good = 1 - sitting.bad();
            double bad = sitting.bad();
            @Nullable Figure compression = null;
            for (Figure figure : sitting.values()) {
                if (figure.kind() == TestKind.Figure.COMPRESSION) {
                    compression = figure;
                } else {
                    good *= expected.good(figure);
                    bad *= ReadingChance.bad(figure.value(), range(figure.kind()));
                }
            }
            for (Heard heard : sitting.heard()) {
                double chance = expected.heard(heard.path());
                good *= heard.there() ? chance : 1 - chance;
                bad *= 0.5;
            }
            if (compression == null) {
                for (int i = 0; i < into.length; i++) {
                    into[i] *= good + bad;
                }
            } else {
                weighCompression(compression.value() - shift, shift, good, bad, expected.compression(), grid, into);
            }
        }
    }

    private static void weighCompression(
            double value, double shift, double good, double bad, double[] expected, HealthyGrid grid, double[] into) {
        double[] bell = new double[into.length];
        double first = value - grid.ln()[0];
        ReadingChance.falling(first, HealthyGrid.STEP, expected[0], expected[1], Gauges.COMPRESSION, bell);
        for (int i = 0; i < into.length; i++) {
            double broad = ReadingChance.bad(first + shift - i * HealthyGrid.STEP, Gauges.COMPRESSION);
            into[i] *= good * bell[i] + bad * broad;
        }
    }

    /** No condition makes the figures likelier than this. */
    double highest(Physics physics) {
        double highest = 1;
        for (Figures sitting : figures) {
            double good = 1 - sitting.bad();
            double bad = sitting.bad();
            for (Figure figure : sitting.values()) {
                good *= Math.max(1, 1 / (scatter(figure.kind(), physics) * Math.sqrt(2 * Math.PI)));
                bad *= ReadingChance.bad(figure.value(), range(figure.kind()));
            }
            highest *= good + bad;
        }
        return highest;
    }

    private static double scatter(TestKind.Figure kind, Physics physics) {
        return switch (kind) {
            case COMPRESSION -> physics.compression().scatter();
            case WET_RATIO -> physics.wet().scatter();
            case LEAK -> physics.leak();
            case CURRENT -> physics.current();
            case BALANCE -> physics.balance();
        };
    }

    static double[] range(TestKind.Figure kind) {
        return switch (kind) {
            case COMPRESSION -> Gauges.COMPRESSION;
            case WET_RATIO -> Gauges.WET;
            case LEAK -> Gauges.LEAK;
            case CURRENT, BALANCE -> Gauges.RELATIVE;
        };
    }
}
