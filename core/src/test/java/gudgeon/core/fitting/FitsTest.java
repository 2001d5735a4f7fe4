package gudgeon.core.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Fits against brute force over every permutation, and small cases that a mechanic can follow (common practice). */
class FitsTest {
    private static final int RUNS = 1000;

    /** Calls with every choice of so many different numbers below the other, in every order. */
    private static void orders(int places, int pieces, Consumer<int[]> each) {
        orders(new int[places], 0, pieces, each);
    }

    private static void orders(int[] taken, int at, int pieces, Consumer<int[]> each) {
        if (at == taken.length) {
            each.accept(taken);
            return;
        }
        for (int piece = 0; piece < pieces; piece++) {
            int candidate = piece;
            if (IntStream.range(0, at).noneMatch(before -> taken[before] == candidate)) {
                taken[at] = piece;
                orders(taken, at + 1, pieces, each);
            }
        }
    }

    private static double hundredths(Random random, double least, double most) {
        return Math.rint((least + random.nextDouble() * (most - least)) * 100) / 100;
    }

    @Test
    void shimsAgreeWithBruteForce() {
        Random random = new Random(41);
        for (int run = 0; run < RUNS; run++) {
            List<ShimFit.Valve> valves = new ArrayList<>();
            int count = 1 + random.nextInt(4);
            Aim aim = new Aim(0.15, 0.20, 0.25);
            for (int valve = 0; valve < count; valve++) {
                valves.add(new ShimFit.Valve(
                        "v" + valve, hundredths(random, 0.02, 0.4), hundredths(random, 2.5, 2.9), aim));
            }
            List<Double> box = IntStream.range(0, random.nextInt(3))
                    .mapToObj(i -> hundredths(random, 2.4, 3))
                    .toList();
            List<Double> shop = random.nextBoolean() ? List.of() : List.of(2.5, 2.55, 2.6, 2.65, 2.7, 2.75, 2.8);
            ShimFit fit = ShimFit.of(valves, box, shop);
            String said = "seed 41, run " + run;
            for (ShimFit.Plan plan : fit.plans()) {
                Aim.Quality brute = bruteShims(valves, box, shop, plan.bought()).getFirst();
                assertThat(plan.after().outside()).as(said).isEqualTo(brute.outside());
                assertThat(plan.after().total_um()).as(said).isCloseTo(brute.total_um(), within(1e-6));
            }
            ShimFit.Plan best = fit.plans().getFirst();
            for (int fewer = 0; fewer < best.bought(); fewer++) {
                assertThat(bruteShims(valves, box, shop, fewer).getFirst().outside())
                        .as(said)
                        .isGreaterThan(best.after().outside());
            }
            assertThat(best.after().outside()).isLessThanOrEqualTo(fit.before().outside());
        }
    }

    /** The best quality with at most so many bought: every shim on hand once, every size of the shop as often as may be bought. */
    private static List<Aim.Quality> bruteShims(
            List<ShimFit.Valve> valves, List<Double> box, List<Double> shop, int purchases) {
        List<Double> onHand =
                new ArrayList<>(valves.stream().map(ShimFit.Valve::shim_mm).toList());
        onHand.addAll(box);
        List<Aim.Quality> best = new ArrayList<>();
        bruteShims(valves, onHand, shop, purchases, new ArrayList<>(), best);
        return best;
    }

    private static void bruteShims(
            List<ShimFit.Valve> valves,
            List<Double> onHand,
            List<Double> shop,
            int purchases,
            List<Double> chosen,
            List<Aim.Quality> best) {
        if (chosen.size() == valves.size()) {
            Aim.Quality quality = Aim.Quality.of(
                    valves.stream().map(ShimFit.Valve::aim).toArray(Aim[]::new),
                    IntStream.range(0, chosen.size())
                            .mapToDouble(valve -> valves.get(valve).with(chosen.get(valve)))
                            .toArray());
            if (best.isEmpty()
                    || quality.outside() < best.getFirst().outside()
                    || (quality.outside() == best.getFirst().outside()
                            && quality.total_um() < best.getFirst().total_um() - 1e-6)) {
                best.clear();
                best.add(quality);
            }
            return;
        }
        for (int shim = 0; shim < onHand.size(); shim++) {
            List<Double> left = new ArrayList<>(onHand);
            chosen.add(left.remove(shim));
            bruteShims(valves, left, shop, purchases, chosen, best);
            chosen.removeLast();
        }
        for (double size : purchases > 0 ? shop : List.<Double>of()) {
            chosen.add(size);
            bruteShims(valves, onHand, shop, purchases - 1, chosen, best);
            chosen.removeLast();
        }
    }

    /** Two valves whose shims only need to change places; nothing is bought. */
    @Test
    void shimsThatChangePlaces() {
        Aim aim = new Aim(0.15, 0.20, 0.25);
        ShimFit fit = ShimFit.of(
                List.of(
                        new ShimFit.Valve("inlet 1", 0.10, 2.70, aim),
                        new ShimFit.Valve("inlet 2", 0.30, 2.60, aim),
                        new ShimFit.Valve("inlet 3", 0.20, 2.65, aim)),
                List.of(),
                List.of(2.5, 2.6, 2.7));
        ShimFit.Plan plan = fit.plans().getFirst();
        assertThat(fit.before())
                .isEqualTo(
                        new Aim.Quality(2, fit.before().worst_um(), fit.before().total_um()));
        assertThat(plan.bought()).isZero();
        assertThat(plan.after().outside()).isZero();
        assertThat(plan.placed())
                .extracting(ShimFit.Placed::from)
                .containsExactly(ShimFit.From.VALVE, ShimFit.From.VALVE, ShimFit.From.STAYS);
        assertThat(plan.placed().get(0).clearance_mm()).isCloseTo(0.20, within(1e-9));
    }

    @Test
    void pairsAgreeWithBruteForce() {
        Random random = new Random(42);
        for (int run = 0; run < RUNS; run++) {
            int places = 1 + random.nextInt(4);
            double[] bores = random.doubles(places, 86.00, 86.03).toArray();
            double[] pistons =
                    random.doubles(places + random.nextInt(2), 85.93, 85.97).toArray();
            Aim aim = new Aim(0.03, 0.05, 0.03 + 0.06 * random.nextDouble() + 0.02);
            PairFit fit = PairFit.of(bores, pistons, aim);
            List<Aim.Quality> all = new ArrayList<>();
            orders(
                    places,
                    pistons.length,
                    taken -> all.add(Aim.Quality.of(
                            aim,
                            IntStream.range(0, places)
                                    .mapToDouble(bore -> bores[bore] - pistons[taken[bore]])
                                    .toArray())));
            int outside = all.stream().mapToInt(Aim.Quality::outside).min().orElseThrow();
            String said = "seed 42, run " + run;
            Aim.Quality best = fit.best().quality();
            assertThat(best.outside()).as(said).isEqualTo(outside);
            if (outside == 0) {
                double worst = all.stream()
                        .filter(each -> each.outside() == 0)
                        .mapToDouble(Aim.Quality::worst_um)
                        .min()
                        .orElseThrow();
                assertThat(best.worst_um()).as(said).isCloseTo(worst, within(1e-6));
            } else {
                double total = all.stream()
                        .filter(each -> each.outside() == outside)
                        .mapToDouble(Aim.Quality::total_um)
                        .min()
                        .orElseThrow();
                assertThat(best.total_um()).as(said).isCloseTo(total, within(1e-5));
            }
        }
    }

    @Test
    void ringsAgreeWithBruteForce() {
        Random random = new Random(43);
        for (int run = 0; run < RUNS; run++) {
            int places = 1 + random.nextInt(4);
            double[] bores = random.doubles(places, 86.00, 86.05).toArray();
            double[] gaps = random.doubles(places + random.nextInt(2), 0.1, 0.7).toArray();
            Aim aim = new Aim(0.3, 0.4, 0.6);
            RingFit fit = RingFit.of(bores, gaps, 86.0, aim);
            double[] least = {Double.POSITIVE_INFINITY};
            orders(places, gaps.length, taken -> {
                int unusable = 0;
                double filed = 0;
                for (int bore = 0; bore < places; bore++) {
                    double gap = gaps[taken[bore]] + Math.PI * (bores[bore] - 86.0);
                    unusable += gap > 0.6 ? 1 : 0;
                    filed += Math.max(0, 0.3 - gap);
                }
                least[0] = Math.min(least[0], unusable * 1000 + filed);
            });
            assertThat(fit.best().unusable() * 1000 + fit.best().file_mm())
                    .as("seed 43, run %d", run)
                    .isCloseTo(least[0], within(1e-9));
        }
    }

    @Test
    void shellsAgreeWithBruteForce() {
        Random random = new Random(44);
        for (int run = 0; run < RUNS; run++) {
            List<ShellFit.Bearing> bearings = new ArrayList<>();
            for (int each = 0; each < 1 + random.nextInt(3); each++) {
                bearings.add(new ShellFit.Bearing(
                        "m" + each, 59 + random.nextInt(20) / 1000.0, 55 - random.nextInt(20) / 1000.0));
            }
            List<ShellFit.Grade> grades = new ArrayList<>();
            for (int grade = 0; grade < 3; grade++) {
                grades.add(new ShellFit.Grade(
                        "g" + grade, 1.980 + grade * 0.005, random.nextInt(5), random.nextInt(4) > 0));
            }
            Aim aim = new Aim(0.025, 0.035, 0.050);
            List<double[]> found = new ArrayList<>();
            bruteShells(
                    bearings,
                    grades,
                    aim,
                    0,
                    grades.stream().mapToInt(ShellFit.Grade::onHand).toArray(),
                    new double[3],
                    found);
            ShellFit.Plan plan = ShellFit.of(bearings, grades, aim).plan();
            String said = "seed 44, run " + run;
            if (found.isEmpty()) {
                assertThat(plan.placed()).as(said).isEmpty();
                continue;
            }
            double[] best = found.stream().min(Arrays::compare).orElseThrow();
            assertThat(plan.quality().outside()).as(said).isEqualTo((int) best[0]);
            assertThat(plan.boughtHalves()).as(said).isEqualTo((int) best[1]);
            assertThat(plan.quality().total_um()).as(said).isCloseTo(best[2], within(1e-5));
        }
    }

    private static void bruteShells(
            List<ShellFit.Bearing> bearings,
            List<ShellFit.Grade> grades,
            Aim aim,
            int at,
            int[] left,
            double[] sofar,
            List<double[]> found) {
        if (at == bearings.size()) {
            found.add(new double[] {sofar[0], sofar[1], Math.rint(sofar[2] * 1e6) / 1e6});
            return;
        }
        for (int a = 0; a < 3; a++) {
            for (int b = a; b < 3; b++) {
                int[] after = left.clone();
                after[a]--;
                after[b]--;
                if ((after[a] < 0 && !grades.get(a).forSale())
                        || (after[b] < 0 && !grades.get(b).forSale())) {
                    continue;
                }
                int bought = 0;
                for (int grade = 0; grade < 3; grade++) {
                    bought += after[grade] < 0 ? -after[grade] : 0;
                    after[grade] = Math.max(0, after[grade]);
                }
                double clearance = bearings.get(at).housing_mm()
                        - bearings.get(at).journal_mm()
                        - grades.get(a).thickness_mm()
                        - grades.get(b).thickness_mm();
                bruteShells(
                        bearings,
                        grades,
                        aim,
                        at + 1,
                        after,
                        new double[] {
                            sofar[0] + (aim.holds(clearance) ? 0 : 1),
                            sofar[1] + bought,
                            sofar[2] + aim.off_um(clearance)
                        },
                        found);
            }
        }
    }

    @Test
    void weightsAgreeWithBruteForce() {
        Random random = new Random(45);
        for (int run = 0; run < RUNS; run++) {
            int sets = 1 + random.nextInt(4);
            List<double[]> kinds = new ArrayList<>();
            for (int kind = 0; kind < 2 + run % 2; kind++) {
                kinds.add(random.doubles(sets, 400, 420)
                        .map(each -> Math.rint(each * 10) / 10)
                        .toArray());
            }
            double[] least = {Double.POSITIVE_INFINITY};
            orders(sets, sets, second -> {
                int[] kept = second.clone();
                if (kinds.size() == 2) {
                    least[0] = Math.min(least[0], spread(kinds, kept, kept));
                } else {
                    orders(sets, sets, third -> least[0] = Math.min(least[0], spread(kinds, kept, third)));
                }
            });
            WeightFit fit = WeightFit.of(kinds);
            assertThat(fit.best().spread_g()).as("seed 45, run %d", run).isCloseTo(least[0], within(1e-9));
            assertThat(fit.proven()).isTrue();
        }
    }

    private static double spread(List<double[]> kinds, int[] second, int[] third) {
        double[] sums = new double[second.length];
        Arrays.setAll(
                sums,
                set -> kinds.get(0)[set]
                        + kinds.get(1)[second[set]]
                        + (kinds.size() > 2 ? kinds.get(2)[third[set]] : 0));
        Arrays.sort(sums);
        return sums[sums.length - 1] - sums[0];
    }

    /** Eight of three kinds, against a plain search set by set. */
    @Test
    void eightCylindersOfThreeKinds() {
        Random random = new Random(8);
        for (int run = 0; run < 3; run++) {
            List<double[]> kinds = new ArrayList<>();
            for (int kind = 0; kind < 3; kind++) {
                kinds.add(random.doubles(8, 100, 130).toArray());
            }
            WeightFit fit = WeightFit.of(kinds);
            double[] least = {Double.POSITIVE_INFINITY};
            setBySet(kinds, 0, 0, 0, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, least);
            assertThat(fit.best().spread_g()).as("seed 8, run %d", run).isCloseTo(least[0], within(1e-9));
            assertThat(fit.best().takeOff_g(0).stream()
                            .mapToDouble(Double::doubleValue)
                            .max()
                            .orElseThrow())
                    .isCloseTo(least[0], within(1e-9));
            for (int kind = 0; kind < 3; kind++) {
                int each = kind;
                assertThat(fit.best().members().stream()
                                .map(set -> set.get(each))
                                .distinct())
                        .hasSize(8);
            }
        }
    }

    private static void setBySet(
            List<double[]> kinds, int at, int seconds, int thirds, double lightest, double heaviest, double[] least) {
        if (heaviest - lightest >= least[0]) {
            return;
        }
        if (at == kinds.getFirst().length) {
            least[0] = heaviest - lightest;
            return;
        }
        for (int b = 0; b < kinds.getFirst().length; b++) {
            for (int c = 0; c < kinds.getFirst().length; c++) {
                if ((seconds >> b & 1) == 0 && (thirds >> c & 1) == 0) {
                    double sum = kinds.get(0)[at] + kinds.get(1)[b] + kinds.get(2)[c];
                    setBySet(
                            kinds,
                            at + 1,
                            seconds | 1 << b,
                            thirds | 1 << c,
                            Math.min(lightest, sum),
                            Math.max(heaviest, sum),
                            least);
                }
            }
        }
    }

    /** The highest reading decides; a low piston asks for its rod; a reading near the end of a grade is told. */
    @Test
    void aGasketByProtrusion() {
        List<GasketFit.Grade> grades = List.of(
                new GasketFit.Grade("one notch", 0.40, 0.55, 1.40),
                new GasketFit.Grade("two notches", 0.55, 0.65, 1.50),
                new GasketFit.Grade("three notches", 0.65, 0.75, 1.60));
        List<GasketFit.Piston> pistons = List.of(
                new GasketFit.Piston(0.58, 0.60),
                new GasketFit.Piston(0.57, 0.59),
                new GasketFit.Piston(0.48, 0.49),
                new GasketFit.Piston(0.56, 0.60));
        GasketFit fit = GasketFit.of(pistons, grades, 0.01, 0.06);
        assertThat(fit.highest_mm()).isEqualTo(0.60);
        assertThat(fit.grade().orElseThrow().name()).isEqualTo("two notches");
        assertThat(fit.tooClose()).isEmpty();
        assertThat(fit.low()).containsExactly(2);
        assertThat(fit.clearances_mm().getFirst()).isCloseTo(0.90, within(1e-9));
        assertThat(GasketFit.of(List.of(new GasketFit.Piston(0.648, 0.64)), grades, 0.01, 0.06)
                        .tooClose()
                        .orElseThrow()
                        .name())
                .isEqualTo("three notches");
        assertThat(GasketFit.of(List.of(new GasketFit.Piston(0.9, 0.9)), grades, 0.01, 0.06)
                        .grade())
                .isEmpty();
    }

    /** 0.35 mm measured with a 2.30 mm washer, 0.10 to 0.20 wanted: 2.50 leaves 0.15. */
    @Test
    void anEndFloat() {
        EndFloatFit fit = EndFloatFit.of(0.35, 2.30, List.of(2.30, 2.40, 2.50, 2.60), 1, Aim.between(0.10, 0.20));
        assertThat(fit.before().outside()).isEqualTo(1);
        assertThat(fit.choices().getFirst().pieces_mm()).containsExactly(2.50);
        assertThat(fit.choices()).hasSize(1);
        EndFloatFit stacked = EndFloatFit.of(0.35, 2.30, List.of(1.2, 1.3, 2.7), 2, Aim.between(0.10, 0.20));
        assertThat(stacked.choices().getFirst().pieces_mm()).containsExactly(1.2, 1.3);
        assertThatThrownBy(() -> Aim.between(0.2, 0.1)).hasMessageContaining("swapped");
    }
}
