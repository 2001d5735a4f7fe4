package gudgeon.core.fitting;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A tin of bolts of several kinds and the holes that they came out of: which kind may go where, in how many ways all holes can be
 * filled, what is forced, and where a bolt that is left over may belong.
 *
 * <p>A way tells how many of each kind of bolt go to each kind of hole; a way hole by hole tells for each single hole which kind
 * of bolt is in it. Bolts of a kind are alike. Counts are exact; ranges come from largest flows.
 *
 * @param bolts the kinds of bolt
 * @param holes the kinds of hole
 * @param pairs by kind of bolt, by kind of hole: what becomes of it there
 * @param ways how many ways there are to fill all holes, kind by kind
 * @param waysHoleByHole how many, hole by hole
 * @param ranges by kind of bolt, by kind of hole: how many there can be in it; empty when no way fills all holes
 * @param some the first ways in order; rows are kinds of bolt
 * @param unfilled kinds of hole that together ask for more bolts than may go into them; none when all can be filled
 */
public record MixedTin(
        List<TinBolt> bolts,
        List<TinHole> holes,
        List<List<BoltInHole>> pairs,
        BigInteger ways,
        BigInteger waysHoleByHole,
        List<List<Range>> ranges,
        List<List<List<Integer>>> some,
        List<Integer> unfilled) {
    private static final int SHOWN = 20;

    public MixedTin {
        bolts = List.copyOf(bolts);
        holes = List.copyOf(holes);
        pairs = pairs.stream().map(List::copyOf).toList();
        ranges = ranges.stream().map(List::copyOf).toList();
        some = some.stream().map(way -> way.stream().map(List::copyOf).toList()).toList();
        unfilled = List.copyOf(unfilled);
    }

    /** Fewest and most bolts of a kind in the holes of a kind, over all ways. */
    public record Range(int fewest, int most) {
        /** Whether every way has the same number, and it is not 0. */
        public boolean isForced() {
            return fewest == most && most > 0;
        }
    }

    /** Looks at a tin. */
    public static MixedTin of(List<TinBolt> bolts, List<TinHole> holes) {
        if (bolts.isEmpty() || holes.isEmpty() || bolts.size() > 40 || holes.size() > 40) {
            throw new IllegalArgumentException("a tin has 1 to 40 kinds of bolt, and 1 to 40 kinds of hole");
        }
        List<List<BoltInHole>> pairs = bolts.stream()
                .map(bolt ->
                        holes.stream().map(hole -> BoltInHole.of(bolt, hole)).toList())
                .toList();
        boolean[][] legal = legal(pairs);
        int[] have = bolts.stream().mapToInt(TinBolt::count).toArray();
        int[] need = holes.stream().mapToInt(TinHole::count).toArray();
        TinFlow flow = new TinFlow(legal, have, need);
        boolean fills = flow.fills();
        TinCount count = new TinCount(legal, have, need);
        return new MixedTin(
                bolts,
                holes,
                pairs,
                fills ? count.ways() : BigInteger.ZERO,
                fills ? count.waysHoleByHole() : BigInteger.ZERO,
                fills ? ranges(legal, have, need) : List.of(),
                fills ? count.first(SHOWN) : List.of(),
                flow.unfilled());
    }

    private static boolean[][] legal(List<List<BoltInHole>> pairs) {
        boolean[][] legal = new boolean[pairs.size()][];
        for (int bolt = 0; bolt < legal.length; bolt++) {
            legal[bolt] = new boolean[pairs.get(bolt).size()];
            for (int hole = 0; hole < legal[bolt].length; hole++) {
                legal[bolt][hole] = pairs.get(bolt).get(hole).isLegal();
            }
        }
        return legal;
    }

    private static List<List<Range>> ranges(boolean[][] legal, int[] have, int[] need) {
        List<List<Range>> ranges = new ArrayList<>();
        for (int bolt = 0; bolt < have.length; bolt++) {
            List<Range> row = new ArrayList<>();
            for (int hole = 0; hole < need.length; hole++) {
                row.add(legal[bolt][hole] ? range(legal, have, need, bolt, hole) : new Range(0, 0));
            }
            ranges.add(row);
        }
        return ranges;
    }

    private static Range range(boolean[][] legal, int[] have, int[] need, int bolt, int hole) {
        int most = Math.min(have[bolt], need[hole]);
        while (most > 0 && !fillsAfter(legal, have, need, bolt, hole, most)) {
            most--;
        }
        boolean[][] without = Arrays.stream(legal).map(boolean[]::clone).toArray(boolean[][]::new);
        without[bolt][hole] = false;
        int fewest = 0;
        while (fewest < most && !fillsAfter(without, have, need, bolt, hole, fewest)) {
            fewest++;
        }
        return new Range(fewest, most);
    }

    /** Whether the rest can be filled when so many of a kind are put into a kind of hole beforehand. */
    private static boolean fillsAfter(boolean[][] legal, int[] have, int[] need, int bolt, int hole, int number) {
        int[] left = have.clone();
        int[] open = need.clone();
        left[bolt] -= number;
        open[hole] -= number;
        return new TinFlow(legal, left, open).fills();
    }

    /** How many bolts are left when all holes are filled; negative when there are too few. */
    public int over() {
        return bolts.stream().mapToInt(TinBolt::count).sum()
                - holes.stream().mapToInt(TinHole::count).sum();
    }

    /** The kind of bolt that fills all holes of a kind in every way, if there is one. */
    public Optional<TinBolt> findForced(int hole) {
        for (int bolt = 0; bolt < ranges.size(); bolt++) {
            Range range = ranges.get(bolt).get(hole);
            if (range.fewest() == holes.get(hole).count()) {
                return Optional.of(bolts.get(bolt));
            }
        }
        return Optional.empty();
    }

    /**
     * Where a bolt that was left over may belong: its chances over all ways in which every hole, looked at or not, has a bolt that
     * may be there, each way hole by hole taken as equally likely. When there are more bolts than holes it may also belong nowhere here.
     *
     * @param bolt index of its kind
     * @param seen by kind of hole, how many were looked at and are filled
     * @param cost by kind of hole, what it costs to open one again, in any unit, above 0
     */
    public Leftover leftover(int bolt, int[] seen, double[] cost) {
        if (bolt < 0 || bolt >= bolts.size() || seen.length != holes.size() || cost.length != holes.size()) {
            throw new IllegalArgumentException("a leftover bolt is one of the tin, and every kind of hole has a cost");
        }
        boolean[][] legal = legal(pairs);
        int[] have = bolts.stream().mapToInt(TinBolt::count).toArray();
        have[bolt]--;
        BigInteger[] worlds = new BigInteger[holes.size()];
        for (int hole = 0; hole < worlds.length; hole++) {
            int open = holes.get(hole).count() - seen[hole];
            if (seen[hole] < 0 || open < 0 || !(cost[hole] > 0)) {
                throw new IllegalArgumentException("holes " + holes.get(hole).name()
                        + ": no more are looked at than there are, and a cost is above 0");
            }
            int[] need = holes.stream().mapToInt(TinHole::count).toArray();
            need[hole]--;
            worlds[hole] = open > 0 && legal[bolt][hole]
                    ? new TinCount(legal, have, need).waysHoleByHole().multiply(BigInteger.valueOf(open))
                    : BigInteger.ZERO;
        }
        int[] need = holes.stream().mapToInt(TinHole::count).toArray();
        BigInteger nowhere = new TinFlow(legal, have, need).fills()
                ? new TinCount(legal, have, need).waysHoleByHole()
                : BigInteger.ZERO;
        return Leftover.of(bolt, worlds, nowhere, cost);
    }
}
