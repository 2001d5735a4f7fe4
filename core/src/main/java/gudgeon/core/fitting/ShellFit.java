package gudgeon.core.fitting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which grades of bearing shell go into which bearing: two halves each, of one grade or of two, from those on hand and the fewest
 * bought. Oil clearance is housing less journal less both halves.
 *
 * <p>Fewest bearings outside their limits; then fewest halves bought; then nearest to the best in total; then fewest mixed pairs.
 * Exact: bearing by bearing over what is left on hand.
 *
 * @param plan the best
 * @param oneGrade the best when both halves of a bearing are of one grade
 */
public record ShellFit(Plan plan, Plan oneGrade) {
    /**
     * A bearing as measured.
     *
     * @param name what it is called
     * @param housing_mm bore of the housing without shells, bolts tightened
     * @param journal_mm diameter of the journal, smaller
     */
    public record Bearing(String name, double housing_mm, double journal_mm) {
        public Bearing {
            if (!(journal_mm > 0 && housing_mm > journal_mm)) {
                throw new IllegalArgumentException("bearing " + name + ": the housing, " + housing_mm
                        + " mm, is wider than the journal, " + journal_mm + " mm. Maybe the two are swapped?");
            }
        }
    }

    /**
     * A grade of shell.
     *
     * @param name mark or colour
     * @param thickness_mm of a half at its middle
     * @param onHand halves that are there
     * @param forSale whether more can be bought
     */
    public record Grade(String name, double thickness_mm, int onHand, boolean forSale) {
        public Grade {
            if (!(thickness_mm > 0) || onHand < 0) {
                throw new IllegalArgumentException(
                        "shell " + name + " needs a thickness above 0 and a count of at least 0");
            }
        }
    }

    /**
     * Two halves in a bearing.
     *
     * @param bearing its index
     * @param first index of a grade
     * @param second index of a grade, not before the first
     * @param clearance_mm what the oil clearance becomes
     */
    public record Placed(int bearing, int first, int second, double clearance_mm) {}

    /**
     * A plan.
     *
     * @param placed by bearing; empty when there are too few shells
     * @param bought by grade, halves to buy
     * @param quality how good it is
     */
    public record Plan(List<Placed> placed, List<Integer> bought, Aim.Quality quality) {
        public Plan {
            placed = List.copyOf(placed);
            bought = List.copyOf(bought);
        }

        /** Halves to buy. */
        public int boughtHalves() {
            return bought.stream().mapToInt(Integer::intValue).sum();
        }
    }

    /** Solves it for bearings that all aim at the same clearance. */
    public static ShellFit of(List<Bearing> bearings, List<Grade> grades, Aim aim) {
        if (bearings.isEmpty() || grades.isEmpty()) {
            throw new IllegalArgumentException("shells are chosen from at least one grade for at least one bearing");
        }
        return new ShellFit(
                new Solver(bearings, grades, aim, true).solve(), new Solver(bearings, grades, aim, false).solve());
    }

    /** What the rest of the bearings costs, and the pair that the first of them takes. */
    private record Rest(int missing, int outside, int bought, double off_um, int mixed, int first, int second) {
        static final Rest NONE = new Rest(0, 0, 0, 0, 0, -1, -1);
        static final Comparator<Rest> ORDER = Comparator.comparingInt(Rest::missing)
                .thenComparingInt(Rest::outside)
                .thenComparingInt(Rest::bought)
                .thenComparingDouble(rest -> Math.rint(rest.off_um() * 1e6))
                .thenComparingInt(Rest::mixed);
    }

    /** Dynamic programming: bearing by bearing, over the halves left on hand. */
    private static final class Solver {
        private final List<Bearing> bearings;
        private final List<Grade> grades;
        private final Aim aim;
        private final boolean mixing;
        private final Map<List<Integer>, Rest> known = new HashMap<>();

        Solver(List<Bearing> bearings, List<Grade> grades, Aim aim, boolean mixing) {
            this.bearings = bearings;
            this.grades = grades;
            this.aim = aim;
            this.mixing = mixing;
        }

        Plan solve() {
            List<Integer> left =
                    new ArrayList<>(grades.stream().map(Grade::onHand).toList());
            List<Integer> bought =
                    new ArrayList<>(grades.stream().map(grade -> 0).toList());
            List<Placed> placed = new ArrayList<>();
            for (int bearing = 0; bearing < bearings.size(); bearing++) {
                Rest rest = rest(bearing, left);
                if (rest.missing() > 0) {
                    return new Plan(
                            List.of(),
                            grades.stream().map(grade -> 0).toList(),
                            new Aim.Quality(bearings.size(), 0, 0));
                }
                placed.add(new Placed(
                        bearing, rest.first(), rest.second(), clearance_mm(bearing, rest.first(), rest.second())));
                for (int grade : new int[] {rest.first(), rest.second()}) {
                    if (left.get(grade) > 0) {
                        left.set(grade, left.get(grade) - 1);
                    } else {
                        bought.set(grade, bought.get(grade) + 1);
                    }
                }
            }
            return new Plan(
                    placed,
                    bought,
                    Aim.Quality.of(
                            aim,
                            placed.stream().mapToDouble(Placed::clearance_mm).toArray()));
        }

        private Rest rest(int bearing, List<Integer> left) {
            if (bearing == bearings.size()) {
                return Rest.NONE;
            }
            List<Integer> key = new ArrayList<>(left);
            key.add(bearing);
            Rest found = known.get(key);
            if (found == null) {
                found = best(bearing, left);
                known.put(key, found);
            }
            return found;
        }

        private Rest best(int bearing, List<Integer> left) {
            Rest best = new Rest(1, 0, 0, 0, 0, -1, -1);
            for (int first = 0; first < grades.size(); first++) {
                for (int second = first; second < (mixing ? grades.size() : first + 1); second++) {
                    List<Integer> after = new ArrayList<>(left);
                    int bought = take(after, first) + take(after, second);
                    if (bought >= NOT_FOR_SALE) {
                        continue;
                    }
                    Rest rest = rest(bearing + 1, after);
                    double clearance_mm = clearance_mm(bearing, first, second);
                    Rest whole = new Rest(
                            rest.missing(),
                            rest.outside() + (aim.holds(clearance_mm) ? 0 : 1),
                            rest.bought() + bought,
                            rest.off_um() + aim.off_um(clearance_mm),
                            rest.mixed() + (first == second ? 0 : 1),
                            first,
                            second);
                    best = Rest.ORDER.compare(whole, best) < 0 ? whole : best;
                }
            }
            return best;
        }

        private static final int NOT_FOR_SALE = 1000;

        private int take(List<Integer> left, int grade) {
            if (left.get(grade) > 0) {
                left.set(grade, left.get(grade) - 1);
                return 0;
            }
            return grades.get(grade).forSale() ? 1 : NOT_FOR_SALE;
        }

        private double clearance_mm(int bearing, int first, int second) {
            return bearings.get(bearing).housing_mm()
                    - bearings.get(bearing).journal_mm()
                    - grades.get(first).thickness_mm()
                    - grades.get(second).thickness_mm();
        }
    }
}
