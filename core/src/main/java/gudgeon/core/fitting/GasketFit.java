package gudgeon.core.fitting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Which thickness of head gasket a diesel needs, by how far its pistons stand out of the block. Every piston is read at two
 * points, over the gudgeon pin or on both sides of it; the highest reading decides. Skimming the head does not change it, skimming the block
 * does. Common practice.
 *
 * @param highest_mm the reading that decides
 * @param grade the grade for it; empty when no grade covers it
 * @param tooClose the other grade that the highest reading may belong to within its uncertainty; empty when it is clear
 * @param clearances_mm by piston, compressed gasket less the piston's highest reading; empty without a grade
 * @param spread_mm highest less lowest piston, by the means of their points
 * @param low pistons lower than the highest by more than the spread that is allowed: look for a bent rod
 * @param rocked pistons whose two points differ by more than that
 * @param byMean the grade that the highest mean would give, when that is another
 */
public record GasketFit(
        double highest_mm,
        Optional<Grade> grade,
        Optional<Grade> tooClose,
        List<Double> clearances_mm,
        double spread_mm,
        List<Integer> low,
        List<Integer> rocked,
        Optional<Grade> byMean) {
    public GasketFit {
        clearances_mm = List.copyOf(clearances_mm);
        low = List.copyOf(low);
        rocked = List.copyOf(rocked);
    }

    /**
     * A grade of gasket.
     *
     * @param name mark or number of notches
     * @param from_mm standing out above this
     * @param upTo_mm and at most this
     * @param thickness_mm when compressed
     */
    public record Grade(String name, double from_mm, double upTo_mm, double thickness_mm) {
        public Grade {
            if (!(upTo_mm > from_mm && thickness_mm > 0)) {
                throw new IllegalArgumentException("gasket " + name + " covers " + from_mm + " to " + upTo_mm
                        + " mm. Maybe the ends are swapped?");
            }
        }

        private boolean covers(double out_mm) {
            return out_mm > from_mm && out_mm <= upTo_mm;
        }
    }

    /**
     * A piston as read at its top.
     *
     * @param first_mm standing out at one point, negative below the block
     * @param second_mm at the other
     */
    public record Piston(double first_mm, double second_mm) {
        /** The higher of the two. */
        public double highest_mm() {
            return Math.max(first_mm, second_mm);
        }

        /** Half way between. */
        public double mean_mm() {
            return (first_mm + second_mm) / 2;
        }
    }

    /**
     * Chooses.
     *
     * @param pistons at least one
     * @param grades in any order
     * @param uncertainty_mm expanded uncertainty of a reading, at least 0
     * @param allowed_mm how far pistons may differ before a rod is looked at, above 0
     */
    public static GasketFit of(List<Piston> pistons, List<Grade> grades, double uncertainty_mm, double allowed_mm) {
        if (pistons.isEmpty() || !(uncertainty_mm >= 0 && allowed_mm > 0)) {
            throw new IllegalArgumentException(
                    "a gasket is chosen for at least one piston, with an uncertainty of at least 0 and a spread above 0");
        }
        double highest_mm =
                pistons.stream().mapToDouble(Piston::highest_mm).max().orElseThrow();
        double highestMean_mm =
                pistons.stream().mapToDouble(Piston::mean_mm).max().orElseThrow();
        double lowestMean_mm =
                pistons.stream().mapToDouble(Piston::mean_mm).min().orElseThrow();
        Optional<Grade> grade = find(grades, highest_mm);
        Optional<Grade> lower = find(grades, highest_mm - uncertainty_mm);
        Optional<Grade> upper = find(grades, highest_mm + uncertainty_mm);
        return new GasketFit(
                highest_mm,
                grade,
                other(upper, grade).or(() -> other(lower, grade)),
                grade.map(chosen -> pistons.stream()
                                .map(piston -> chosen.thickness_mm() - piston.highest_mm())
                                .toList())
                        .orElse(List.of()),
                highestMean_mm - lowestMean_mm,
                which(pistons, piston -> highestMean_mm - piston.mean_mm() > allowed_mm),
                which(pistons, piston -> Math.abs(piston.first_mm() - piston.second_mm()) > allowed_mm),
                other(find(grades, highestMean_mm), grade));
    }

    private static Optional<Grade> find(List<Grade> grades, double out_mm) {
        return grades.stream().filter(grade -> grade.covers(out_mm)).min(Comparator.comparingDouble(Grade::upTo_mm));
    }

    private static Optional<Grade> other(Optional<Grade> found, Optional<Grade> chosen) {
        return found.filter(grade -> !chosen.filter(grade::equals).isPresent());
    }

    private static List<Integer> which(List<Piston> pistons, java.util.function.Predicate<Piston> test) {
        List<Integer> which = new ArrayList<>();
        IntStream.range(0, pistons.size())
                .filter(piston -> test.test(pistons.get(piston)))
                .forEach(which::add);
        return which;
    }
}
