package gudgeon.core.fitting;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Counts and lists the ways to fill all holes: kind of hole by kind of hole, over the bolts that are left. */
final class TinCount {
    private static final int MOST_STATES = 2_000_000;

    private final boolean[][] legal;
    private final int[] have;
    private final int[] need;
    private final Map<List<Integer>, BigInteger> known = new HashMap<>();

    TinCount(boolean[][] legal, int[] have, int[] need) {
        this.legal = legal;
        this.have = have;
        this.need = need;
    }

    BigInteger ways() {
        known.clear();
        return count(0, have.clone(), false);
    }

    BigInteger waysHoleByHole() {
        known.clear();
        return count(0, have.clone(), true);
    }

    private BigInteger count(int hole, int[] left, boolean single) {
        if (hole == need.length) {
            return BigInteger.ONE;
        }
        List<Integer> key = new ArrayList<>(Arrays.stream(left).boxed().toList());
        key.add(hole);
        BigInteger found = known.get(key);
        if (found == null) {
            if (known.size() >= MOST_STATES) {
                throw new IllegalArgumentException(
                        "so many kinds of bolt and hole cannot be counted. Maybe one tin, or one cover, at a time?");
            }
            found = fill(hole, 0, need[hole], left, single);
            known.put(key, found);
        }
        return found;
    }

    /** Ways to give a kind of hole its bolts from a kind of bolt on, and the rest after it. */
    private BigInteger fill(int hole, int bolt, int open, int[] left, boolean single) {
        if (bolt == left.length) {
            return open == 0 ? count(hole + 1, left, single) : BigInteger.ZERO;
        }
        BigInteger sum = BigInteger.ZERO;
        int most = legal[bolt][hole] ? Math.min(open, left[bolt]) : 0;
        for (int number = 0; number <= most; number++) {
            left[bolt] -= number;
            BigInteger rest = fill(hole, bolt + 1, open - number, left, single);
            left[bolt] += number;
            sum = sum.add(single ? rest.multiply(choose(open, number)) : rest);
        }
        return sum;
    }

    private static BigInteger choose(int all, int some) {
        BigInteger result = BigInteger.ONE;
        for (int each = 1; each <= some; each++) {
            result = result.multiply(BigInteger.valueOf(all - some + each)).divide(BigInteger.valueOf(each));
        }
        return result;
    }

    /** The first ways, each as rows of kinds of bolt. */
    List<List<List<Integer>>> first(int most) {
        List<List<List<Integer>>> found = new ArrayList<>();
        known.clear();
        list(0, 0, need[0], have.clone(), new int[have.length][need.length], most, found);
        return found;
    }

    private void list(
            int hole, int bolt, int open, int[] left, int[][] placed, int most, List<List<List<Integer>>> found) {
        if (found.size() >= most) {
            return;
        }
        if (bolt == left.length) {
            if (open > 0) {
                return;
            }
            if (hole + 1 == need.length) {
                found.add(Arrays.stream(placed)
                        .map(row -> Arrays.stream(row).boxed().toList())
                        .toList());
            } else if (count(hole + 1, left, false).signum() > 0) {
                list(hole + 1, 0, need[hole + 1], left, placed, most, found);
            }
            return;
        }
        for (int number = legal[bolt][hole] ? Math.min(open, left[bolt]) : 0; number >= 0; number--) {
            left[bolt] -= number;
            placed[bolt][hole] = number;
            list(hole, bolt + 1, open - number, left, placed, most, found);
            placed[bolt][hole] = 0;
            left[bolt] += number;
        }
    }
}
