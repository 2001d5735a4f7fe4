package gudgeon.core.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.core.bolting.MetricThread;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The mixed tin, against enumeration hole by hole; lengths of engagement are common practice. */
class MixedTinTest {
    private static final MetricThread M6 = new MetricThread(6, 1);
    private static final MetricThread M8 = new MetricThread(8, 1.25);

    private static TinHole blind(String name, int count, MetricThread thread, double clamped_mm, double depth_mm) {
        return new TinHole(
                name,
                count,
                thread,
                false,
                clamped_mm,
                new TinHole.Ground(TinHole.Material.ALUMINIUM, depth_mm, false),
                TinHole.Behind.NOTHING);
    }

    /** 23 bolts of four lengths and two pitches; the cover's four short holes have the belt behind them. */
    private static MixedTin cover(boolean longerPump) {
        List<TinBolt> bolts = List.of(
                new TinBolt("M6x20", 8, M6, false, 20),
                new TinBolt("M6x30", 6, M6, false, 30),
                new TinBolt("M8x35", 5, M8, false, 35),
                new TinBolt("M8x50", 4, M8, false, 50));
        List<TinHole> holes = List.of(
                blind("cover edge", 4, M6, 8, 16),
                new TinHole(
                        "cover over the belt",
                        4,
                        M6,
                        false,
                        8,
                        new TinHole.Ground(TinHole.Material.ALUMINIUM, 12, true),
                        new TinHole.Behind(true, 3, "")),
                blind("idler plate", 6, M6, 14, 22),
                blind("pump", 5, M8, longerPump ? 17 : 16, 22),
                blind("mounting", 4, M8, 30, 24));
        return MixedTin.of(bolts, holes);
    }

    @Test
    void whatEachBoltDoesInEachHole() {
        MixedTin tin = cover(false);
        BoltInHole longAtBelt = tin.pairs().get(1).get(1);
        assertThat(longAtBelt.hindrances()).containsExactly(BoltInHole.Hindrance.REACHES_MOVING_PART);
        assertThat(longAtBelt.over_mm()).isCloseTo(7, within(1e-9));
        assertThat(tin.pairs().get(1).get(0).hindrances()).containsExactly(BoltInHole.Hindrance.BOTTOMS);
        assertThat(tin.pairs().get(0).get(2).hindrances()).containsExactly(BoltInHole.Hindrance.SHORT);
        assertThat(tin.pairs().get(0).get(3).hindrances()).contains(BoltInHole.Hindrance.OTHER_THREAD);
        assertThat(tin.pairs().get(0).get(0).isLegal()).isTrue();
    }

    @Test
    void everythingForced() {
        MixedTin tin = cover(false);
        assertThat(tin.over()).isZero();
        assertThat(tin.ways()).isEqualTo(BigInteger.ONE);
        assertThat(tin.waysHoleByHole()).isEqualTo(BigInteger.ONE);
        assertThat(IntStream.range(0, 5)
                        .mapToObj(hole -> tin.findForced(hole).orElseThrow().name()))
                .containsExactly("M6x20", "M6x20", "M6x30", "M8x35", "M8x50");
        assertThat(tin.unfilled()).isEmpty();
    }

    /** One short M6 left over: it can only be missing at the edge or over the belt, four holes each. */
    @Test
    void oneLeftOver() {
        MixedTin tin = cover(false);
        Leftover left = tin.leftover(0, new int[] {0, 0, 0, 0, 0}, new double[] {10, 45, 30, 60, 90});
        assertThat(left.likeliest()).extracting(Leftover.Candidate::hole).containsExactly(0, 1);
        assertThat(left.likeliest().getFirst().chance()).isCloseTo(0.5, within(1e-12));
        assertThat(left.toLook()).extracting(Leftover.Candidate::hole).containsExactly(0, 1);
        assertThat(left.expectedCost()).isCloseTo(0.5 * 10 + 0.5 * 55, within(1e-9));
        assertThat(left.nowhere()).isZero();
        Leftover seen = tin.leftover(0, new int[] {3, 0, 0, 0, 0}, new double[] {10, 45, 30, 60, 90});
        assertThat(seen.likeliest().getFirst().chance()).isCloseTo(0.8, within(1e-12));
        assertThat(seen.likeliest().getFirst().hole()).isEqualTo(1);
    }

    @Test
    void holesThatCannotBeFilled() {
        MixedTin tin = MixedTin.of(
                List.of(new TinBolt("M6x20", 3, M6, false, 20), new TinBolt("M8x35", 9, M8, false, 35)),
                List.of(blind("edge", 4, M6, 8, 16), blind("pump", 4, M8, 16, 22)));
        assertThat(tin.ways()).isEqualTo(BigInteger.ZERO);
        assertThat(tin.unfilled()).containsExactly(0);
        assertThat(tin.ranges()).isEmpty();
    }

    /** Engagement asked for: once the diameter in steel, one and a quarter to one and a half in cast iron, twice in aluminium. */
    @Test
    void engagementByMaterial() {
        for (TinHole.Material material : TinHole.Material.values()) {
            double least_mm = material.leastDiameters() * 8;
            assertThat(m8(material, least_mm).isLegal()).isTrue();
            assertThat(m8(material, least_mm - 0.1).hindrances()).containsExactly(BoltInHole.Hindrance.SHORT);
        }
        assertThat(m8(TinHole.Material.CAST_IRON, 11).remarks()).contains(BoltInHole.Remark.ENGAGEMENT_FAIR);
        assertThat(m8(TinHole.Material.CAST_IRON, 12).remarks()).isEmpty();
        assertThat(TinHole.Material.find("grey cast iron")).contains(TinHole.Material.CAST_IRON);
        assertThat(TinHole.Material.find("aluminium alloy")).contains(TinHole.Material.ALUMINIUM);
        assertThat(TinHole.Material.find("plastic")).isEmpty();
    }

    private static BoltInHole m8(TinHole.Material material, double engaged_mm) {
        return BoltInHole.of(
                new TinBolt("M8", 1, M8, false, 10 + engaged_mm),
                new TinHole("h", 1, M8, false, 10, new TinHole.Ground(material, 40, false), TinHole.Behind.NOTHING));
    }

    @Test
    void countsAgreeWithEnumeration() {
        Random random = new Random(23);
        for (int run = 0; run < 1000; run++) {
            List<TinBolt> bolts = new ArrayList<>();
            List<TinHole> holes = new ArrayList<>();
            for (int kind = 0; kind < 1 + random.nextInt(3); kind++) {
                bolts.add(new TinBolt("b" + kind, 1 + random.nextInt(3), M8, false, 24 + 4 * random.nextInt(4)));
            }
            for (int kind = 0; kind < 1 + random.nextInt(3); kind++) {
                holes.add(blind(
                        "h" + kind, 1 + random.nextInt(2), M8, 6 + 4 * random.nextInt(3), 18 + 4 * random.nextInt(2)));
            }
            MixedTin tin = MixedTin.of(bolts, holes);
            List<int[]> ways = new ArrayList<>();
            List<Integer> single = new ArrayList<>();
            for (int hole = 0; hole < holes.size(); hole++) {
                for (int each = 0; each < holes.get(hole).count(); each++) {
                    single.add(hole);
                }
            }
            enumerate(
                    tin,
                    single,
                    new int[single.size()],
                    0,
                    bolts.stream().mapToInt(TinBolt::count).toArray(),
                    ways);
            String said = "seed 23, run " + run;
            assertThat(tin.waysHoleByHole()).as(said).isEqualTo(BigInteger.valueOf(ways.size()));
            Set<String> tables = new HashSet<>();
            ways.forEach(way -> tables.add(Arrays.deepToString(table(way, single, bolts.size(), holes.size()))));
            assertThat(tin.ways()).as(said).isEqualTo(BigInteger.valueOf(tables.size()));
            assertThat(tin.some()).as(said).hasSize(Math.min(20, tables.size())).doesNotHaveDuplicates();
            assertThat(tin.unfilled().isEmpty()).as(said).isEqualTo(!ways.isEmpty());
            if (!ways.isEmpty()) {
                sameRanges(tin, ways, single, said);
                sameChances(tin, ways, single, said);
            }
        }
    }

    private static void enumerate(MixedTin tin, List<Integer> single, int[] way, int at, int[] left, List<int[]> ways) {
        if (at == way.length) {
            ways.add(way.clone());
            return;
        }
        for (int bolt = 0; bolt < left.length; bolt++) {
            if (left[bolt] > 0 && tin.pairs().get(bolt).get(single.get(at)).isLegal()) {
                left[bolt]--;
                way[at] = bolt;
                enumerate(tin, single, way, at + 1, left, ways);
                left[bolt]++;
            }
        }
    }

    private static int[][] table(int[] way, List<Integer> single, int bolts, int holes) {
        int[][] table = new int[bolts][holes];
        for (int at = 0; at < way.length; at++) {
            table[way[at]][single.get(at)]++;
        }
        return table;
    }

    private static void sameRanges(MixedTin tin, List<int[]> ways, List<Integer> single, String said) {
        for (int bolt = 0; bolt < tin.bolts().size(); bolt++) {
            for (int hole = 0; hole < tin.holes().size(); hole++) {
                int b = bolt;
                int h = hole;
                int[] numbers = ways.stream()
                        .mapToInt(way -> table(
                                way, single, tin.bolts().size(), tin.holes().size())[b][h])
                        .toArray();
                assertThat(tin.ranges().get(bolt).get(hole))
                        .as(said)
                        .isEqualTo(new MixedTin.Range(
                                Arrays.stream(numbers).min().orElseThrow(),
                                Arrays.stream(numbers).max().orElseThrow()));
            }
        }
    }

    /** The one that is left over sits in one hole that has its kind: each such hole of each way is as likely. */
    private static void sameChances(MixedTin tin, List<int[]> ways, List<Integer> single, String said) {
        double[] worlds = new double[tin.holes().size()];
        for (int[] way : ways) {
            for (int at = 0; at < way.length; at++) {
                worlds[single.get(at)] += way[at] == 0 ? 1 : 0;
            }
        }
        // belonging nowhere: all holes are filled by the others
        double nowhere = ways.stream()
                .filter(way -> Arrays.stream(way).filter(bolt -> bolt == 0).count()
                        < tin.bolts().getFirst().count())
                .count();
        double all = Arrays.stream(worlds).sum() + nowhere;
        double[] cost = new double[worlds.length];
        Arrays.fill(cost, 1);
        Leftover left = tin.leftover(0, new int[cost.length], cost);
        assertThat(left.nowhere()).as(said).isCloseTo(nowhere / all, within(1e-9));
        for (Leftover.Candidate candidate : left.likeliest()) {
            assertThat(candidate.chance()).as(said).isCloseTo(worlds[candidate.hole()] / all, within(1e-9));
        }
    }
}
