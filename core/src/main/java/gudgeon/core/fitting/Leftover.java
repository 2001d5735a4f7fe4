package gudgeon.core.fitting;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where a bolt that was left over may belong, and in which order to look.
 *
 * <p>Looking in the order of chance over cost finds it at the least expected cost. Source: [STONE1975].
 *
 * @param bolt index of its kind
 * @param likeliest kinds of hole where it may be missing, the likeliest first
 * @param toLook the same in the order in which to look
 * @param expectedCost of looking in that order until it is found, or until all was looked at
 * @param nowhere chance that it belongs to none of these holes
 */
public record Leftover(
        int bolt, List<Candidate> likeliest, List<Candidate> toLook, double expectedCost, double nowhere) {
    public Leftover {
        likeliest = List.copyOf(likeliest);
        toLook = List.copyOf(toLook);
    }

    /**
     * A kind of hole where it may belong.
     *
     * @param hole its index
     * @param chance 0 to 1; all together, with nowhere, 1
     * @param cost of opening it again
     */
    public record Candidate(int hole, double chance, double cost) {}

    static Leftover of(int bolt, BigInteger[] worlds, BigInteger nowhere, double[] cost) {
        BigDecimal all = new BigDecimal(Arrays.stream(worlds).reduce(nowhere, BigInteger::add));
        List<Candidate> candidates = IntStream.range(0, worlds.length)
                .filter(hole -> worlds[hole].signum() > 0)
                .mapToObj(hole -> new Candidate(
                        hole,
                        new BigDecimal(worlds[hole])
                                .divide(all, MathContext.DECIMAL64)
                                .doubleValue(),
                        cost[hole]))
                .toList();
        List<Candidate> toLook = candidates.stream()
                .sorted(Comparator.comparingDouble((Candidate each) -> -each.chance() / each.cost())
                        .thenComparingInt(Candidate::hole))
                .toList();
        double spent = 0;
        double expected = 0;
        for (Candidate each : toLook) {
            spent += each.cost();
            expected += each.chance() * spent;
        }
        double chanceNowhere = nowhere.signum() == 0
                ? 0
                : new BigDecimal(nowhere).divide(all, MathContext.DECIMAL64).doubleValue();
        return new Leftover(
                bolt,
                candidates.stream()
                        .sorted(Comparator.comparingDouble((Candidate each) -> -each.chance())
                                .thenComparingInt(Candidate::hole))
                        .toList(),
                toLook,
                expected + chanceNowhere * spent,
                chanceNowhere);
    }
}
