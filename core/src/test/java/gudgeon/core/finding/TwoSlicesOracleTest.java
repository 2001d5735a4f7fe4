package gudgeon.core.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Both slices against an enumeration of every set of members, every point of the grid and every set of faults, grade and way of
 * every cylinder, written from docs/finding.md: findings of the engine weighed directly, without subsets. Random evidence; the
 * seed is printed.
 */
class TwoSlicesOracleTest {
    private final EngineModel model = new EngineModel(SmallKnowledge.knowledge(), SmallKnowledge.facts(2));

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15, 16})
    void agreesWithEnumeration(long seed) {
        List<Observation> seen = random(new Random(seed));
        Posterior fast = Diagnosis.posterior(model, seen, 0);
        Enumeration slow = new Enumeration(seen);
        slow.run();
        assertThat(fast.logChance()).as("seed " + seed).isCloseTo(Math.log(slow.total), within(1e-9));
        for (Posterior.Belief belief : fast.beliefs()) {
            String key = belief.fault().id() + "@" + belief.where().label();
            assertThat(belief.chance())
                    .as(key + ", seed " + seed)
                    .isCloseTo(slow.marginals.getOrDefault(key, 0.0) / slow.total, within(1e-10));
        }
        for (Depth depth : Depth.values()) {
            assertThat(fast.atLeast(depth))
                    .as(depth + ", seed " + seed)
                    .isCloseTo(depth == Depth.NONE ? 1 : slow.deep[depth.ordinal()] / slow.total, within(1e-10));
        }
    }

    /** What the beam leaves out moves nothing by more than it says, and little. */
    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23})
    void theBeamLeavesLittleOut(long seed) {
        List<Observation> seen = random(new Random(seed));
        Posterior all = Diagnosis.posterior(model, seen, 0);
        Posterior quick = Diagnosis.posterior(model, seen, Diagnosis.BEAM);
        for (Posterior.Belief belief : all.beliefs()) {
            assertThat(quick.chance(belief.fault().id(), belief.where().label()))
                    .as("seed " + seed)
                    .isCloseTo(belief.chance(), within(1e-4));
        }
    }

    private static List<Observation> random(Random random) {
        List<Observation> seen = new ArrayList<>();
        seen.add(new Observation.Seen("ASK", "rough", 0, random.nextInt(4) > 0, 1));
        seen.add(new Observation.Seen("ASK", "smoke", 0, random.nextBoolean(), 1));
        seen.add(new Observation.Seen("READER", "lean", 0, random.nextBoolean(), 1));
        for (int i = 1; i <= 2; i++) {
            seen.add(figure("COMP", TestKind.Figure.COMPRESSION, i, 12e5 * (.4 + .65 * random.nextDouble())));
            if (random.nextBoolean()) {
                seen.add(new Observation.Seen("READER", "code", i, random.nextBoolean(), 1));
            }
        }
        seen.add(figure("LEAK", TestKind.Figure.LEAK, 1, .05 + .7 * random.nextDouble()));
        seen.add(new Observation.Seen("LEAK", "hiss", 1, random.nextBoolean(), 1));
        return seen;
    }

    private static Observation figure(String test, TestKind.Figure figure, int cylinder, double value) {
        return new Observation.Measured(
                test, figure, cylinder, value, 0, OptionalDouble.of(Instruments.SMALL), Instruments.USUAL_SUPPLY, 1);
    }

    /** The slow plain rival. */
    private final class Enumeration {
        final Evidence evidence;
        final Map<String, Double> marginals = new LinkedHashMap<>();
        final double[] deep = new double[Depth.values().length];
        double total;

        Enumeration(List<Observation> seen) {
            evidence = new Evidence(model, seen);
        }

        /** One way a cylinder may be: its faults, and for each point chance times likelihood. */
        private record State(List<Fault> faults, double[] weights) {}

        void run() {
            List<Member> members = model.members();
            List<List<Member>> sets = new ArrayList<>();
            sets.add(List.of());
            for (int a = 0; a < members.size(); a++) {
                sets.add(List.of(members.get(a)));
                for (int b = a + 1; b < members.size(); b++) {
                    if (members.get(a).identity() != members.get(b).identity()) {
                        sets.add(List.of(members.get(a), members.get(b)));
                    }
                }
            }
            double norm = sets.stream().mapToDouble(this::odds).sum();
            for (List<Member> set : sets) {
                List<State> one = states(0, set);
                List<State> two = states(1, set);
                for (State a : one) {
                    for (State b : two) {
                        double together = 0;
                        for (int c = 0; c < a.weights().length; c++) {
                            together += model.grid().chance()[c] * a.weights()[c] * b.weights()[c];
                        }
                        add(set, a, b, together * odds(set) / norm * findings(set, a, b));
                    }
                }
            }
        }

        private double odds(List<Member> set) {
            return set.stream().mapToDouble(Member::odds).reduce(1, (x, y) -> x * y);
        }

        private void add(List<Member> set, State a, State b, double weight) {
            total += weight;
            int depth = 0;
            for (Member member : set) {
                marginals.merge(member.fault().id() + "@" + member.where().label(), weight, Double::sum);
                depth = Math.max(depth, member.fault().repair().mended().ordinal());
            }
            for (Fault fault : a.faults()) {
                marginals.merge(fault.id() + "@1", weight, Double::sum);
                depth = Math.max(depth, fault.repair().mended().ordinal());
            }
            for (Fault fault : b.faults()) {
                marginals.merge(fault.id() + "@2", weight, Double::sum);
                depth = Math.max(depth, fault.repair().mended().ordinal());
            }
            for (int d = 1; d <= depth; d++) {
                deep[d] += weight;
            }
        }

        private double findings(List<Member> set, State a, State b) {
            double chance = 1;
            List<FindingKind> both = new ArrayList<>(evidence.present());
            both.addAll(evidence.absent());
            for (int f = 0; f < both.size(); f++) {
                FindingKind finding = both.get(f);
                List<Fault> raisers = new ArrayList<>(set.stream().map(Member::fault).toList());
                raisers.addAll(a.faults());
                raisers.addAll(b.faults());
                double away = 1 - evidence.foldedAlarm(finding);
                for (double pass : evidence.foldedPasses(finding, raisers)) {
                    away *= pass;
                }
                chance *= f < evidence.present().size() ? 1 - away : away;
            }
            return chance;
        }

        private List<State> states(int cylinder, List<Member> set) {
            List<List<Fault>> sets = new ArrayList<>();
            sets.add(List.of());
            for (int f = 0; f < model.faults().size(); f++) {
                sets.add(List.of(model.faults().get(f)));
                for (int g = f + 1; g < model.faults().size() && set.isEmpty(); g++) {
                    sets.add(List.of(model.faults().get(f), model.faults().get(g)));
                }
            }
            double norm = 0;
            for (List<Fault> faults : sets) {
                norm += odds(faults, cylinder, set);
            }
            List<State> states = new ArrayList<>();
            for (List<Fault> faults : sets) {
                double[] weights = new double[model.grid().ln().length];
                grades(faults, 0, Condition.HEALTHY, odds(faults, cylinder, set) / norm, cylinder, set, weights);
                double answers = answers(faults, cylinder, set);
                for (int c = 0; c < weights.length; c++) {
                    weights[c] *= answers;
                }
                states.add(new State(faults, weights));
            }
            return states;
        }

        private double odds(List<Fault> faults, int cylinder, List<Member> set) {
            double odds = 1;
            for (Fault fault : faults) {
                double p = fault.chance().alone();
                for (Member member : set) {
                    if (member.touches(cylinder)) {
                        p = Math.max(p, fault.chance().with().getOrDefault(member.fault().id(), 0.0));
                    }
                }
                odds *= p / (1 - p);
            }
            return odds;
        }

        /** Every grade of every fault, then every option of every member. */
        private void grades(
                List<Fault> faults, int at, Condition so, double chance, int cylinder, List<Member> set, double[] weights) {
            if (at < faults.size()) {
                List<Grade> grades = faults.get(at).grades();
                if (grades.isEmpty()) {
                    grades(faults, at + 1, so, chance, cylinder, set, weights);
                }
                for (Grade grade : grades) {
                    grades(faults, at + 1, so.with(grade), chance * grade.share(), cylinder, set, weights);
                }
                return;
            }
            options(0, so, chance, cylinder, set, weights);
        }

        private void options(
                int at, Condition so, double chance, int cylinder, List<Member> set, double[] weights) {
            if (at < set.size()) {
                List<Member.Option> options = set.get(at).options().get(cylinder);
                if (options.isEmpty()) {
                    options(at + 1, so, chance, cylinder, set, weights);
                }
                for (Member.Option option : options) {
                    options(at + 1, so.with(option.condition()), chance * option.chance(), cylinder, set, weights);
                }
                return;
            }
            double[] into = new double[weights.length];
            java.util.Arrays.fill(into, chance);
            evidence.cylinder(cylinder).weigh(new Expected(so, model.gauges()), 0, model.grid(), into);
            for (int c = 0; c < weights.length; c++) {
                weights[c] += into[c];
            }
        }

        private double answers(List<Fault> faults, int cylinder, List<Member> set) {
            double chance = 1;
            for (CylinderReadings.Answers sitting : evidence.cylinder(cylinder).answers()) {
                double good = 1;
                for (int i = 0; i < sitting.findings().length; i++) {
                    FindingKind finding = model.cylinderFindings().get(sitting.findings()[i]);
                    double away = 1 - finding.falseAlarm();
                    for (Fault fault : faults) {
                        away *= 1 - model.strength(finding, fault);
                    }
                    for (Member member : set) {
                        away *= member.touches(cylinder) ? 1 - model.strength(finding, member.fault()) : 1;
                    }
                    good *= sitting.there()[i] ? 1 - away : away;
                }
                chance *= (1 - sitting.bad()) * good + sitting.bad() * Math.pow(.5, sitting.findings().length);
            }
            return chance;
        }
    }
}
