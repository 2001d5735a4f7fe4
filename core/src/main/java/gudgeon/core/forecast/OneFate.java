package gudgeon.core.forecast;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A sum of times that go together: on a slow day everything is slow. Fully dependent times add up quantile by quantile; this is
 * the sum of largest spread in its upper part, and what an owner whose estimates are all wrong by the same factor meets.
 * Source: [DHAENE2002], from memory. Immutable. Log-normal work is exact at the levels of the table (a thousand), a seizure is worked out from 200 by 50 equally
 * likely values; between levels the table is interpolated.
 */
public final class OneFate {
    private static final int LEVELS = 1000;
    private static final double[] Z = scores(LEVELS);
    private static final int WORK = 200;
    private static final int LOSS = 50;

    private final double[] at;

    private OneFate(double[] at) {
        this.at = at;
    }

    private static double[] scores(int levels) {
        return IntStream.range(0, levels)
                .mapToDouble(level -> Normal.quantile((level + 0.5) / levels))
                .toArray();
    }

    /** No time at all. */
    public static OneFate zero() {
        return new OneFate(new double[LEVELS]);
    }

    /** The sum of pieces of work that go together. */
    public static OneFate sum(List<WorkTime> times) {
        OneFate sum = zero();
        for (WorkTime time : times) {
            sum = sum.plus(time);
        }
        return sum;
    }

    /** This time and then another that goes with it. */
    public OneFate plus(WorkTime time) {
        double[] more = time.seizure().counts() ? withSeizure(time) : plain(time);
        double[] sum = at.clone();
        for (int level = 0; level < LEVELS; level++) {
            sum[level] += more[level] + time.idle();
        }
        return new OneFate(sum);
    }

    private static double[] plain(WorkTime time) {
        double[] at = new double[LEVELS];
        for (int level = 0; level < LEVELS; level++) {
            at[level] = time.median() * Math.exp(time.sigma() * Z[level]);
        }
        return at;
    }

    /** Values that are equally likely within each half of the mixture, sorted, and read off at the levels. */
    private static double[] withSeizure(WorkTime time) {
        WorkTime.Seizure seizure = time.seizure();
        double[] work = likely(time.median(), time.sigma(), WORK);
        double[] loss = likely(seizure.median(), seizure.sigma(), LOSS);
        int n = WORK + WORK * LOSS;
        double[] value = new double[n];
        double[] weight = new double[n];
        for (int i = 0; i < WORK; i++) {
            value[i] = work[i];
            weight[i] = (1 - seizure.chance()) / WORK;
            for (int j = 0; j < LOSS; j++) {
                value[WORK + i * LOSS + j] = work[i] + loss[j];
                weight[WORK + i * LOSS + j] = seizure.chance() / WORK / LOSS;
            }
        }
        int[] order = IntStream.range(0, n)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> value[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        double[] at = new double[LEVELS];
        double sum = 0;
        int level = 0;
        for (int i : order) {
            sum += weight[i];
            while (level < LEVELS && sum >= (level + 0.5) / LEVELS) {
                at[level++] = value[i];
            }
        }
        Arrays.fill(at, level, LEVELS, value[order[n - 1]]);
        return at;
    }

    private static double[] likely(double median, double sigma, int count) {
        double[] scores = scores(count);
        return Arrays.stream(scores).map(z -> median * Math.exp(sigma * z)).toArray();
    }

    /** The same, but never before some minutes: who is early waits. */
    public OneFate notBefore(double minutes) {
        return new OneFate(
                Arrays.stream(at).map(time -> Math.max(time, minutes)).toArray());
    }

    /** The chance that it is over within some minutes. */
    public double within(double minutes) {
        if (minutes < at[0]) {
            return 0;
        }
        if (minutes >= at[LEVELS - 1]) {
            return 1;
        }
        int above = 1;
        while (at[above] <= minutes) {
            above++;
        }
        double gap = at[above] - at[above - 1];
        double share = gap == 0 ? 0 : (minutes - at[above - 1]) / gap;
        return (above - 0.5 + share) / LEVELS;
    }

    /**
     * The minutes within which it is over with a chance.
     *
     * @param p strictly between 0 and 1; beyond the outermost levels of the table the outermost value
     */
    public double quantile(double p) {
        if (!(p > 0 && p < 1)) {
            throw new IllegalArgumentException("a quantile lies strictly between 0 and 1, not at " + p);
        }
        double place = Math.clamp(p * LEVELS - 0.5, 0, LEVELS - 1);
        int below = (int) Math.min(LEVELS - 2, Math.floor(place));
        return at[below] + (place - below) * (at[below + 1] - at[below]);
    }
}
