package gudgeon.bench.peers;

import gudgeon.core.planning.Sequencer;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.IntVar;

/**
 * A successor for every way of doing an operation; a way that is not used is its own successor, one way of each operation is
 * used. The place of a successor is one more than the way's own; what a way needs has a lower place. The cost of a way is
 * looked up by its successor. Its standard search with restarts on failures.
 */
public final class Choco implements Peer {
    @Override
    public String name() {
        return "Choco 5.0.0";
    }

    @Override
    public Result solve(Sequencer.Numbers numbers, double seconds) {
        Ways ways = Ways.of(numbers);
        int w = ways.count();
        int n = numbers.modes().size();
        Model model = new Model("order");
        IntVar[] next = new IntVar[w];
        for (int way = 0; way < w; way++) {
            int from = way;
            next[way] = model.intVar("next " + way, IntStream.range(0, w)
                    .filter(to -> from == to ? ways.several(from) : ways.mayFollow(from, to))
                    .toArray());
        }
        boolean optional = IntStream.range(0, w).anyMatch(ways::several);
        if (optional) {
            model.subCircuit(next, 0, model.intVar(n + 1)).post();
        } else {
            model.circuit(next).post();
        }
        IntVar[] place = model.intVarArray("place", n, 1, n);
        model.allDifferent(place).post();
        places(model, ways, next, place);
        List<IntVar> costs = new ArrayList<>();
        for (int way = 0; way < w; way++) {
            costs.add(cost(model, numbers, ways, next, way));
        }
        int most = costs.stream().mapToInt(IntVar::getUB).sum();
        IntVar total = model.intVar("total", 0, most);
        model.sum(costs.toArray(IntVar[]::new), "=", total).post();
        model.setObjective(Model.MINIMIZE, total);
        return search(model, total, next, seconds);
    }

    private static IntVar cost(Model model, Sequencer.Numbers numbers, Ways ways, IntVar[] next, int way) {
        int[] table = IntStream.range(0, ways.count())
                .map(to -> way == to ? 0 : ways.cost(numbers, way, to))
                .toArray();
        IntVar cost = model.intVar("cost " + way, 0, IntStream.of(table).max().orElse(0));
        model.element(cost, table, next[way]).post();
        return cost;
    }

    private static void places(Model model, Ways ways, IntVar[] next, IntVar[] place) {
        // by way, with the end behind everything; a way that is not used has no say
        for (int way = 1; way < ways.count(); way++) {
            IntVar own = place[ways.operation().get(way)];
            for (int to = 1; to < ways.count(); to++) {
                if (way != to && ways.mayFollow(way, to)) {
                    IntVar after = place[ways.operation().get(to)];
                    model.ifThen(model.arithm(next[way], "=", to), model.arithm(after, "-", own, "=", 1));
                }
            }
            for (int need : ways.mode().get(way).needs()) {
                if (ways.several(way)) {
                    model.ifThen(model.arithm(next[way], "!=", way), model.arithm(place[need], "<", own));
                } else {
                    model.arithm(place[need], "<", own).post();
                }
            }
        }
        for (List<Integer> own : ways.byOperation()) {
            if (own.size() > 1) {
                model.sum(
                                own.stream()
                                        .map(way -> model.arithm(next[way], "!=", way).reify())
                                        .toArray(org.chocosolver.solver.variables.BoolVar[]::new),
                                "=",
                                1)
                        .post();
            }
        }
    }

    private static Result search(Model model, IntVar total, IntVar[] next, double seconds) {
        Solver solver = model.getSolver();
        solver.limitTime((long) (1000 * seconds));
        solver.setSearch(Search.domOverWDegSearch(next));
        solver.setLubyRestart(500, new org.chocosolver.solver.search.limits.FailCounter(model, 500), 5000);
        long best = -1;
        while (solver.solve()) {
            best = total.getValue();
        }
        boolean proved = best >= 0 && !solver.isStopCriterionMet();
        return new Result(best, proved ? best : -1, proved);
    }
}
