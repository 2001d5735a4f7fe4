package gudgeon.core.forecast;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A person's pace, learned from what was timed: the logarithm of actual over nominal is normal with unknown mean and variance
 * under a normal-inverse-gamma prior (Source: [BDA3] section 3.3, from memory). All timed work gives one pace; each kind of work starts
 * from it and moves away as far as its own record carries. The spread is the predictive one: what is not known about the pace
 * itself is in it. Nothing is stored: the same record gives the same pace.
 */
public final class Paces {
    /** How many timed pieces of work the first guess is worth. */
    private static final double WORTH = 4;

    /** Degrees of freedom of the first guess of the spread, halved. */
    private static final double SHAPE = 4;

    /** Longer or shorter than this factor against the guess is a slip of the pen or a tea break, not a pace. */
    private static final double WILDEST = 20;

    private final Pace all;
    private final Map<String, Pace> byKind;

    private Paces(Pace all, Map<String, Pace> byKind) {
        this.all = all;
        this.byKind = Collections.unmodifiableMap(byKind);
    }

    /**
     * A piece of work that was timed.
     *
     * @param kind what sort of work
     * @param nominal minutes by the file, above 0
     * @param actual minutes that it took, above 0
     */
    public record Timed(String kind, double nominal, double actual) {
        public Timed {
            if (!(nominal > 0 && actual > 0)) {
                throw new IllegalArgumentException("what was timed took some time, not " + nominal + ", " + actual);
            }
        }

        double logRatio() {
            return Math.log(actual / nominal);
        }
    }

    /** Before anything was timed. */
    public static Paces usual() {
        return learned(List.of());
    }

    /** The pace that a record shows. Ratios more than 20 times off the first guess are left out. */
    public static Paces learned(List<Timed> record) {
        List<Timed> sound = record.stream()
                .filter(timed -> Math.abs(timed.logRatio() - Math.log(Pace.USUAL.median())) <= Math.log(WILDEST))
                .toList();
        Pace all = after(Pace.USUAL, sound);
        Map<String, List<Timed>> groups = new LinkedHashMap<>();
        sound.forEach(timed ->
                groups.computeIfAbsent(timed.kind(), kind -> new ArrayList<>()).add(timed));
        Map<String, Pace> byKind = new LinkedHashMap<>();
        groups.forEach((kind, timed) -> byKind.put(kind, after(all, timed)));
        return new Paces(all, byKind);
    }

    /** The posterior predictive of a record, from a first guess that predicts itself when nothing was timed. */
    private static Pace after(Pace guess, List<Timed> record) {
        int n = record.size();
        double m0 = Math.log(guess.median());
        double b0 = guess.sigma() * guess.sigma() * (SHAPE - 1) * WORTH / (WORTH + 1);
        double mean = record.stream().mapToDouble(Timed::logRatio).sum() / Math.max(1, n);
        double squares = record.stream()
                .mapToDouble(timed -> Math.pow(timed.logRatio() - mean, 2))
                .sum();
        double worth = WORTH + n;
        double shape = SHAPE + n / 2.0;
        double b = b0 + squares / 2 + WORTH * n * Math.pow(mean - m0, 2) / (2 * worth);
        double predictive = b / (shape - 1) * (worth + 1) / worth;
        return new Pace(Math.exp((WORTH * m0 + n * mean) / worth), Math.sqrt(predictive), n);
    }

    /** The pace over all work. */
    public Pace all() {
        return all;
    }

    /** The pace at a kind of work; over all work when that kind was never timed. */
    public Pace of(String kind) {
        return byKind.getOrDefault(kind, all);
    }

    /** Kinds that were timed, and their pace, in the order of the record. */
    public Map<String, Pace> kinds() {
        return byKind;
    }

    /** The time that this person needs. */
    public WorkTime time(Nominal nominal) {
        return of(nominal.kind()).time(nominal);
    }
}
