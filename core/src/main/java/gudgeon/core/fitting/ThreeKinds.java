package gudgeon.core.fitting;

import java.util.Arrays;
import java.util.List;

/**
 * Three kinds of pieces, up to 8 of each, to the least spread of sums, exactly. For every sum that the lightest set may have, from
 * the mean downward, the smallest heaviest set: set by set over the pieces of the second and third kind that are left.
 */
final class ThreeKinds {
    private static final double HAIR_g = 1e-9;

    private final double[] first;
    private final double[] second;
    private final double[] third;
    private final int sets;
    private int[][] best;
    private double spread;

    ThreeKinds(List<double[]> kinds, int[][] start) {
        first = kinds.get(0);
        second = kinds.get(1);
        third = kinds.get(2);
        sets = first.length;
        best = start;
        double[] sums = new double[sets];
        Arrays.setAll(sums, set -> sum(start[0][set], start[1][set], start[2][set]));
        spread = Arrays.stream(sums).max().orElse(0) - Arrays.stream(sums).min().orElse(0);
    }

    private double sum(int a, int b, int c) {
        return first[a] + second[b] + third[c];
    }

    int[][] solve() {
        double mean = (Arrays.stream(first).sum()
                        + Arrays.stream(second).sum()
                        + Arrays.stream(third).sum())
                / sets;
        double[] lightest = new double[sets * sets * sets];
        Arrays.setAll(lightest, code -> sum(code / sets / sets, code / sets % sets, code % sets));
        lightest = Arrays.stream(lightest)
                .filter(each -> each <= mean + HAIR_g)
                .sorted()
                .distinct()
                .toArray();
        for (int turn = lightest.length - 1; turn >= 0 && mean - lightest[turn] < spread - HAIR_g; turn--) {
            heaviest(lightest[turn]);
        }
        return best;
    }

    /** Sets that are all at least that heavy; kept when their spread is the smallest so far. */
    private void heaviest(double least) {
        double[] heaviest = new double[1 << (2 * sets)];
        int[] choice = new int[heaviest.length];
        Arrays.fill(heaviest, Double.POSITIVE_INFINITY);
        heaviest[0] = Double.NEGATIVE_INFINITY;
        int all = (1 << sets) - 1;
        for (int state = 0; state < heaviest.length; state++) {
            int seconds = state & all;
            int thirds = state >> sets;
            int placed = Integer.bitCount(seconds);
            if (placed == sets || placed != Integer.bitCount(thirds) || heaviest[state] == Double.POSITIVE_INFINITY) {
                continue;
            }
            extend(state, placed, least, heaviest, choice);
        }
        double most = heaviest[heaviest.length - 1];
        if (most - least < spread - HAIR_g) {
            spread = most - least;
            best = walkBack(choice);
        }
    }

    private void extend(int state, int placed, double least, double[] heaviest, int[] choice) {
        for (int b = 0; b < sets; b++) {
            for (int c = 0; c < sets; c++) {
                int next = state | 1 << b | 1 << (sets + c);
                double sum = sum(placed, b, c);
                boolean free = (state & 1 << b) == 0 && (state & 1 << (sets + c)) == 0;
                if (free && sum >= least - HAIR_g && sum - least < spread - HAIR_g) {
                    double most = Math.max(heaviest[state], sum);
                    if (most < heaviest[next]) {
                        heaviest[next] = most;
                        choice[next] = b * sets + c;
                    }
                }
            }
        }
    }

    private int[][] walkBack(int[] choice) {
        int[][] pieceOf = new int[3][sets];
        int state = choice.length - 1;
        for (int set = sets - 1; set >= 0; set--) {
            int b = choice[state] / sets;
            int c = choice[state] % sets;
            pieceOf[0][set] = set;
            pieceOf[1][set] = b;
            pieceOf[2][set] = c;
            state &= ~(1 << b | 1 << (sets + c));
        }
        return pieceOf;
    }
}
