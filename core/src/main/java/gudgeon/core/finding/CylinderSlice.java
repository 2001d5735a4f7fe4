package gudgeon.core.finding;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One cylinder, given what is wrong in the engine slice: the weight of every set of at most two faults, for every point of the
 * healthy grid, with everything that was read at the cylinder. Cost: bodies x options x grid, and pairs x grid.
 */
final class CylinderSlice {
    private final EngineModel model;
    private final CylinderReadings readings;
    private final int cylinder;
    private final HealthyGrid grid;
    private final int points;
    private final int faults;

    CylinderSlice(EngineModel model, CylinderReadings readings, int cylinder, HealthyGrid grid) {
        this.model = model;
        this.cylinder = cylinder;
        this.readings = readings;
        this.grid = grid;
        points = grid.ln().length;
        faults = model.faults().size();
    }

    /**
     * Weights of the sets of faults, in the order of {@link Sets}.
     *
     * @param byPoint for each set its weight at every point; null where the set is left out
     * @param dropped the most that was left out, as a share
     */
    record Weights(double[][] byPoint, double dropped) {
        /** Every set that is not left out. */
        void forEach(int faults, Each each) {
            each.of(byPoint[0], -1, -1);
            for (int f = 0; f < faults; f++) {
                each.of(byPoint[1 + f], f, -1);
            }
            if (byPoint.length > 1 + faults) {
                int at = 1 + faults;
                for (int f = 0; f < faults; f++) {
                    for (int g = f + 1; g < faults; g++) {
                        double[] pair = byPoint[at++];
                        if (pair != null) {
                            each.of(pair, f, g);
                        }
                    }
                }
            }
        }
    }

    /** Takes the weights of one set of faults, -1 for none. */
    @FunctionalInterface
    interface Each {
        void of(double[] weights, int f, int g);
    }

    /**
     * @param first index of a member of the engine slice, or -1
     * @param second another, or -1
     * @param pairs whether the cylinder may have two faults of its own
     * @param beam sets that add less than this share are left out; 0 for none
     */
    Weights weigh(int first, int second, boolean pairs, double beam) {
        double[] odds = odds(first, second);
        List<Way> options = options(first, second);
        double[] memberPass = memberPass(first, second);
        double[][] seals = seals(options);
        double[][] byPoint = new double[pairs ? Sets.count(faults) : faults + 1][];
        double norm = 1 + Arrays.stream(odds).sum();
        if (pairs) {
            norm += pairs(odds);
        }
        byPoint[0] = scaled(seals[0], asked(-1, -1, memberPass) / norm);
        for (int f = 0; f < faults; f++) {
            byPoint[1 + f] = scaled(seals[1 + f], odds[f] * asked(f, -1, memberPass) / norm);
        }
        double dropped = pairs ? addPairs(byPoint, odds, norm, seals, options, memberPass, beam) : 0;
        return new Weights(byPoint, dropped);
    }

    private double addPairs(
            double[][] byPoint, double[] odds, double norm, double[][] seals, List<Way> options,
            double[] memberPass, double beam) {
        double[] single = new double[points];
        for (int s = 0; s <= faults; s++) {
            add(single, byPoint[s]);
        }
        double most = readings.highest(model.knowledge().physics());
        double best = highest(single);
        double dropped = 0;
        for (int f = 0; f < faults; f++) {
            for (int g = f + 1; g < faults; g++) {
                double weight = odds[f] * odds[g] / norm;
                double bound = weight * most / best;
                if (bound >= beam) {
                    weight *= asked(f, g, memberPass);
                    bound = weight * most / best;
                }
                if (bound < beam) {
                    dropped += bound;
                    continue;
                }
                byPoint[Sets.pair(f, g, faults)] = scaled(pairSeal(f, g, seals, options), weight);
            }
        }
        return dropped;
    }

    private static double highest(double[] single) {
        double best = 0;
        for (double weight : single) {
            best = Math.max(best, weight);
        }
        return best;
    }

    private double[] pairSeal(int f, int g, double[][] seals, List<Way> options) {
        List<EngineModel.Body> a = model.bodies().get(f);
        List<EngineModel.Body> b = model.bodies().get(g);
        if (a.isEmpty()) {
            return seals[1 + g];
        }
        if (b.isEmpty() || !readings.anyFigure()) {
            return seals[1 + f];
        }
        double[] sum = new double[points];
        for (EngineModel.Body x : a) {
            for (EngineModel.Body y : b) {
                addSeal(sum, x.number(), y.number(), x.share() * y.share(), options);
            }
        }
        return sum;
    }

    /** Likelihood of the figures when sound, and with each fault, grades summed. */
    private double[][] seals(List<Way> options) {
        double[][] seals = new double[1 + faults][];
        seals[0] = new double[points];
        addSeal(seals[0], 0, 0, 1, options);
        for (int f = 0; f < faults; f++) {
            List<EngineModel.Body> bodies = model.bodies().get(f);
            if (bodies.isEmpty() || !readings.anyFigure()) {
                seals[1 + f] = seals[0];
            } else {
                seals[1 + f] = new double[points];
                for (EngineModel.Body body : bodies) {
                    addSeal(seals[1 + f], body.number(), 0, body.share(), options);
                }
            }
        }
        return seals;
    }

    private void addSeal(double[] sum, int body, int other, double share, List<Way> options) {
        double[] chance = new double[points];
        for (Way way : options) {
            Arrays.fill(chance, share * way.chance());
            readings.weigh(model.expected(body, other, way.one(), way.two()), way.shift(), grid, chance);
            add(sum, chance);
        }
    }

    /** Likelihood of the answers when these two faults are there. */
    private double asked(int f, int g, double[] memberPass) {
        double chance = 1;
        for (CylinderReadings.Answers answers : readings.answers()) {
            chance *= answers.chance(model.alarms(), memberPass, model.passes(), f, g);
        }
        return chance;
    }

    private double[] memberPass(int first, int second) {
        double[] pass = new double[model.alarms().length];
        Arrays.fill(pass, 1);
        for (int member : new int[] {first, second}) {
            if (member >= 0 && model.members().get(member).touches(cylinder)) {
                for (int i = 0; i < pass.length; i++) {
                    pass[i] *= model.memberPasses()[i][member];
                }
            }
        }
        return pass;
    }

    /** One way the engine slice may leave this cylinder: conditions by number, 0 for none, and a shift. */
    private record Way(double chance, int one, int two, double shift) {}

    private List<Way> options(int first, int second) {
        List<Member.Option> one = options(first);
        List<Member.Option> two = options(second);
        List<Way> ways = new ArrayList<>();
        if (one.isEmpty() && two.isEmpty()) {
            ways.add(new Way(1, 0, 0, 0));
        } else if (one.isEmpty() || two.isEmpty()) {
            (one.isEmpty() ? two : one).forEach(option -> ways.add(new Way(option.chance(), option.core(), 0, option.shift())));
        } else {
            for (Member.Option a : one) {
                for (Member.Option b : two) {
                    ways.add(new Way(a.chance() * b.chance(), a.core(), b.core(), a.shift() + b.shift()));
                }
            }
        }
        return ways;
    }

    private List<Member.Option> options(int member) {
        return member < 0 || !readings.anyFigure() ? List.of() : model.members().get(member).options().get(cylinder);
    }

    private double[] odds(int first, int second) {
        double[] odds = new double[faults];
        for (int f = 0; f < faults; f++) {
            Fault.Chance chance = model.faults().get(f).chance();
            double p = chance.alone();
            for (int member : new int[] {first, second}) {
                if (member >= 0 && model.members().get(member).touches(cylinder)) {
                    p = Math.max(p, chance.with().getOrDefault(model.members().get(member).fault().id(), 0.0));
                }
            }
            odds[f] = p / (1 - p);
        }
        return odds;
    }

    /** Whether a member of the engine slice changes anything at this cylinder, given what was asked there. */
    boolean matters(int member) {
        Member each = model.members().get(member);
        if (!each.touches(cylinder)) {
            return false;
        }
        boolean figures = readings.anyFigure() && each.changesFigures(cylinder);
        boolean chances = model.faults().stream()
                .anyMatch(fault -> fault.chance().with().containsKey(each.fault().id()));
        boolean answers = readings.answers().stream()
                .flatMapToInt(sitting -> Arrays.stream(sitting.findings()))
                .anyMatch(finding -> model.memberPasses()[finding][member] < 1);
        return figures || chances || answers;
    }

    private static double pairs(double[] odds) {
        double sum = 0;
        double squares = 0;
        for (double each : odds) {
            sum += each;
            squares += each * each;
        }
        return (sum * sum - squares) / 2;
    }

    private static double[] scaled(double[] values, double factor) {
        double[] scaled = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            scaled[i] = values[i] * factor;
        }
        return scaled;
    }

    private static void add(double[] sum, double[] more) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += more[i];
        }
    }

    /** The numbering of sets of at most two faults: 0 for none, then the single ones, then pairs row by row. */
    static final class Sets {
        private Sets() {}

        static int count(int faults) {
            return 1 + faults + faults * (faults - 1) / 2;
        }

        static int pair(int f, int g, int faults) {
            int low = Math.min(f, g);
            int high = Math.max(f, g);
            return 1 + faults + low * (2 * faults - low - 1) / 2 + (high - low - 1);
        }
    }
}
