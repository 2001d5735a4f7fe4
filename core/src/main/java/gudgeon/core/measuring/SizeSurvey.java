package gudgeon.core.measuring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * A bore or journal read across at several depths and in several directions. Differences forget what the instrument errs by.
 * A largest difference of readings that scatter is never below what is true on average: near zero it is too large, which {@link
 * #drawn} shows. Two-point readings do not see lobes of odd number.
 *
 * @param readings at least one; each place once
 */
public record SizeSurvey(List<SizeReading> readings) {
    private static final int ENOUGH_DIRECTIONS = 4;

    public SizeSurvey {
        readings = List.copyOf(readings);
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("a bore or journal without a reading");
        }
        long places = readings.stream()
                .map(reading -> reading.worth().place())
                .distinct()
                .count();
        if (places != readings.size()) {
            throw new IllegalArgumentException("a place stands twice. Maybe the second is a repeat of the first?");
        }
    }

    /** The largest reading, with the doubt that a larger size lies between the directions read. */
    public Derived largest() {
        SizeReading most = readings.stream().max(byValue()).orElseThrow();
        return new Derived(
                Derived.Trait.LARGEST, unsampled(most), List.of(most.worth().place()));
    }

    /** The smallest reading, with the same doubt. */
    public Derived smallest() {
        SizeReading least = readings.stream().min(byValue()).orElseThrow();
        return new Derived(
                Derived.Trait.SMALLEST, unsampled(least), List.of(least.worth().place()));
    }

    /** The mean of all readings. */
    public Derived mean() {
        return new Derived(
                Derived.Trait.MEAN,
                Estimate.mean(readings.stream()
                        .map(reading -> reading.worth().estimate())
                        .toList()),
                readings.stream().map(reading -> reading.worth().place()).toList());
    }

    /** The largest difference along one direction; empty when no direction was read at two depths. */
    public Optional<Derived> taper() {
        return widest(Derived.Trait.TAPER, SizeReading::direction);
    }

    /** The largest difference across at one depth; empty when no depth was read in two directions. */
    public Optional<Derived> outOfRound() {
        return widest(Derived.Trait.OUT_OF_ROUND, reading -> String.valueOf(reading.along_mm()));
    }

    /**
     * How much a bore has grown from its size when new, or at a place that does not wear.
     *
     * @param whenNew that size; read with the same instrument, its errors cancel
     */
    public Derived boreWear(Estimate whenNew) {
        SizeReading most = readings.stream().max(byValue()).orElseThrow();
        return new Derived(
                Derived.Trait.WEAR,
                unsampled(most).minus(whenNew),
                List.of(most.worth().place()));
    }

    /** How much a journal has shrunk from its size when new, or at a place that does not wear. */
    public Derived journalWear(Estimate whenNew) {
        SizeReading least = readings.stream().min(byValue()).orElseThrow();
        return new Derived(
                Derived.Trait.WEAR,
                whenNew.minus(unsampled(least)),
                List.of(least.worth().place()));
    }

    /** The distribution of the out-of-round, or the taper, drawn from all its readings at once. */
    public MonteCarlo drawn(Derived.Trait trait, long seed) {
        Function<SizeReading, String> by = switch (trait) {
            case TAPER -> SizeReading::direction;
            case OUT_OF_ROUND -> reading -> String.valueOf(reading.along_mm());
            default -> throw new IllegalArgumentException("only taper and out-of-round are drawn, not " + trait);
        };
        List<Estimate> inputs =
                readings.stream().map(reading -> reading.worth().estimate()).toList();
        List<int[]> groups = groups(by);
        ToDoubleFunction<double[]> model = values -> {
            double most = 0;
            for (int[] group : groups) {
                double low = Double.POSITIVE_INFINITY;
                double high = Double.NEGATIVE_INFINITY;
                for (int i : group) {
                    low = Math.min(low, values[i]);
                    high = Math.max(high, values[i]);
                }
                most = Math.max(most, high - low);
            }
            return most;
        };
        return MonteCarlo.of(inputs, model, seed, MonteCarlo.TRIALS);
    }

    /** How many directions were read where most were. */
    public int directions() {
        return (int) readings.stream().map(SizeReading::direction).distinct().count();
    }

    private Optional<Derived> widest(Derived.Trait trait, Function<SizeReading, String> by) {
        return groups(by).stream()
                .filter(group -> group.length > 1)
                .map(group -> difference(trait, group))
                .max(Comparator.comparingDouble(Derived::value));
    }

    private Derived difference(Derived.Trait trait, int[] group) {
        SizeReading most = readings.get(group[0]);
        SizeReading least = most;
        for (int i : group) {
            SizeReading reading = readings.get(i);
            most = reading.value() > most.value() ? reading : most;
            least = reading.value() < least.value() ? reading : least;
        }
        if (most.equals(least)) {
            least = readings.get(group[1]);
        }
        return new Derived(
                trait,
                most.worth().estimate().minus(least.worth().estimate()),
                List.of(most.worth().place(), least.worth().place()));
    }

    private List<int[]> groups(Function<SizeReading, String> by) {
        Map<String, List<Integer>> groups = new LinkedHashMap<>();
        for (int i = 0; i < readings.size(); i++) {
            groups.computeIfAbsent(by.apply(readings.get(i)), key -> new ArrayList<>())
                    .add(i);
        }
        return groups.values().stream()
                .map(group -> group.stream().mapToInt(Integer::intValue).toArray())
                .toList();
    }

    /** With fewer than four directions, a quarter of the out-of-round seen may be missed. Common practice. */
    private Estimate unsampled(SizeReading reading) {
        Estimate estimate = reading.worth().estimate();
        double seen = outOfRound().map(Derived::value).orElse(0.0);
        if (directions() >= ENOUGH_DIRECTIONS || seen == 0) {
            return estimate;
        }
        return estimate.with(Contribution.within(
                new Source(Source.Kind.FORM, reading.worth().place()), Spread.RECTANGULAR, seen / 4, 1));
    }

    private static Comparator<SizeReading> byValue() {
        return Comparator.comparingDouble(SizeReading::value);
    }
}
