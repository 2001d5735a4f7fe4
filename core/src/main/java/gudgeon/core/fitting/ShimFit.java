package gudgeon.core.fitting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Which shim (or follower) goes where: those that are there may change places, spares are used up, and the fewest are bought;
 * then all are as near to their best as can be, and as few as possible move.
 *
 * <p>A shim thicker by so much takes so much off the clearance. Exact: an assignment of valves to shims on hand and to so many
 * purchases, for every number of purchases.
 *
 * @param before how good it is as it comes
 * @param plans the smallest purchase first, then larger ones that come nearer to the best
 */
public record ShimFit(Aim.Quality before, List<Plan> plans) {
    private static final double OUTSIDE = 1e9;
    private static final double MOVED = 1e-4;

    public ShimFit {
        plans = List.copyOf(plans);
    }

    /**
     * A valve as measured.
     *
     * @param name what it is called
     * @param clearance_mm with the shim that is in it; negative when it holds the valve open
     * @param shim_mm thickness of that shim as measured, above 0
     * @param aim what the clearance should be
     */
    public record Valve(String name, double clearance_mm, double shim_mm, Aim aim) {
        public Valve {
            if (!(shim_mm > 0) || !Double.isFinite(clearance_mm)) {
                throw new IllegalArgumentException("valve " + name + " needs a clearance and a shim above 0 mm");
            }
        }

        /** The clearance with another shim, millimetres. */
        public double with(double other_mm) {
            return clearance_mm + shim_mm - other_mm;
        }

        /** The shim that would make it perfect, millimetres. */
        public double perfect_mm() {
            return clearance_mm + shim_mm - aim.wanted_mm();
        }
    }

    /** Where a shim comes from. */
    public enum From {
        /** It is in this valve already. */
        STAYS,
        /** It is in another valve now. */
        VALVE,
        /** A spare. */
        BOX,
        BOUGHT
    }

    /**
     * A shim put to a valve.
     *
     * @param valve index of the valve
     * @param shim_mm its thickness
     * @param from where it comes from
     * @param source index of the valve or of the spare it comes from; -1 when it is bought
     * @param clearance_mm what the clearance becomes
     */
    public record Placed(int valve, double shim_mm, From from, int source, double clearance_mm) {}

    /**
     * A plan.
     *
     * @param bought how many shims are bought
     * @param placed by valve
     * @param after how good it becomes
     */
    public record Plan(int bought, List<Placed> placed, Aim.Quality after) {
        public Plan {
            placed = List.copyOf(placed);
        }
    }

    /**
     * Solves it.
     *
     * @param valves at least one
     * @param box_mm spares, thickness each
     * @param shop_mm sizes that can be bought; none when nothing is to be bought
     */
    public static ShimFit of(List<Valve> valves, List<Double> box_mm, List<Double> shop_mm) {
        if (valves.isEmpty()) {
            throw new IllegalArgumentException("there is no valve to shim");
        }
        Aim[] aims = valves.stream().map(Valve::aim).toArray(Aim[]::new);
        Aim.Quality before = Aim.Quality.of(
                aims, valves.stream().mapToDouble(Valve::clearance_mm).toArray());
        List<Plan> all = new ArrayList<>();
        int most = shop_mm.isEmpty() ? 0 : valves.size();
        for (int purchases = 0; purchases <= most; purchases++) {
            all.add(solve(valves, box_mm, shop_mm, purchases));
        }
        int least = all.stream().mapToInt(plan -> plan.after().outside()).min().orElse(0);
        List<Plan> plans = new ArrayList<>();
        for (Plan plan : all) {
            boolean nearer = plans.isEmpty()
                    || plan.after().total_um() < plans.getLast().after().total_um() - 1e-6;
            if (plan.after().outside() == least && nearer) {
                plans.add(plan);
            }
        }
        return new ShimFit(before, plans);
    }

    private static Plan solve(List<Valve> valves, List<Double> box_mm, List<Double> shop_mm, int purchases) {
        int count = valves.size();
        int onHand = count + box_mm.size();
        double[][] cost = new double[count][onHand + purchases];
        for (int valve = 0; valve < count; valve++) {
            for (int column = 0; column < cost[valve].length; column++) {
                double shim_mm = shim_mm(valves, box_mm, shop_mm, valve, column);
                double clearance_mm = valves.get(valve).with(shim_mm);
                Aim aim = valves.get(valve).aim();
                cost[valve][column] = (aim.holds(clearance_mm) ? 0 : OUTSIDE)
                        + aim.off_um(clearance_mm)
                        + (column == valve ? 0 : MOVED)
                        + (column >= onHand ? MOVED : 0);
            }
        }
        List<Integer> columnOf = Assignment.cheapest(cost).orElseThrow().columnOf();
        List<Placed> placed = new ArrayList<>();
        for (int valve = 0; valve < count; valve++) {
            int column = columnOf.get(valve);
            double shim_mm = shim_mm(valves, box_mm, shop_mm, valve, column);
            From from = column == valve
                    ? From.STAYS
                    : column < count ? From.VALVE : column < onHand ? From.BOX : From.BOUGHT;
            int source = column < count ? column : column < onHand ? column - count : -1;
            placed.add(
                    new Placed(valve, shim_mm, from, source, valves.get(valve).with(shim_mm)));
        }
        return new Plan(
                (int) placed.stream().filter(each -> each.from() == From.BOUGHT).count(),
                placed,
                Aim.Quality.of(
                        valves.stream().map(Valve::aim).toArray(Aim[]::new),
                        placed.stream().mapToDouble(Placed::clearance_mm).toArray()));
    }

    private static double shim_mm(
            List<Valve> valves, List<Double> box_mm, List<Double> shop_mm, int valve, int column) {
        int count = valves.size();
        if (column < count) {
            return valves.get(column).shim_mm();
        }
        return column < count + box_mm.size()
                ? box_mm.get(column - count)
                : bought(valves.get(valve), shop_mm).orElseThrow();
    }

    /** The size to buy for a valve: one that is allowed, else any; the nearest; of equally near ones the thinner. */
    private static OptionalDouble bought(Valve valve, List<Double> shop_mm) {
        return shop_mm.stream()
                .sorted()
                .min(Comparator.comparingInt((Double size) -> valve.aim().holds(valve.with(size)) ? 0 : 1)
                        .thenComparingDouble(size -> valve.aim().off_um(valve.with(size))))
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }
}
