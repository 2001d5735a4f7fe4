package gudgeon.bench.peers;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CircuitConstraint;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import gudgeon.core.planning.Sequencer;
import java.util.List;

/**
 * A circuit over all ways of doing the operations: an arc is a literal with its cost; a way that is not used loops to
 * itself, one way of each operation is used; an operation has a place in the order, one more than that of the operation
 * before it; what a way needs has a lower place. Two workers, the seed is 1.
 */
public final class CpSat implements Peer {
    @Override
    public String name() {
        return "CP-SAT 9.15";
    }

    @Override
    public Result solve(Sequencer.Numbers numbers, double seconds) {
        Loader.loadNativeLibraries();
        Ways ways = Ways.of(numbers);
        int n = numbers.modes().size();
        CpModel model = new CpModel();
        CircuitConstraint circuit = model.addCircuit();
        IntVar[] place = new IntVar[n];
        for (int o = 0; o < n; o++) {
            place[o] = model.newIntVar(1, n, "place " + o);
        }
        Literal[] used = new Literal[ways.count()];
        for (int way = 1; way < ways.count(); way++) {
            used[way] = ways.several(way) ? model.newBoolVar("way " + way) : model.trueLiteral();
            if (ways.several(way)) {
                circuit.addArc(way, way, used[way].not());
            }
            for (int need : ways.mode().get(way).needs()) {
                model.addLessThan(place[need], place[ways.operation().get(way)]).onlyEnforceIf(used[way]);
            }
        }
        for (List<Integer> own : ways.byOperation()) {
            if (own.size() > 1) {
                model.addExactlyOne(own.stream().map(way -> used[way]).toList());
            }
        }
        LinearExprBuilder cost = arcs(numbers, ways, model, circuit, place);
        model.addAllDifferent(place);
        model.minimize(cost);
        CpSolver solver = new CpSolver();
        solver.getParameters().setMaxTimeInSeconds(seconds).setNumWorkers(2).setRandomSeed(1);
        CpSolverStatus status = solver.solve(model);
        return switch (status) {
            case OPTIMAL ->
                new Result(Math.round(solver.objectiveValue()), Math.round(solver.bestObjectiveBound()), true);
            case FEASIBLE ->
                new Result(Math.round(solver.objectiveValue()), Math.round(solver.bestObjectiveBound()), false);
            default -> Result.NOTHING;
        };
    }

    private static LinearExprBuilder arcs(
            Sequencer.Numbers numbers, Ways ways, CpModel model, CircuitConstraint circuit, IntVar[] place) {
        LinearExprBuilder cost = LinearExpr.newBuilder();
        for (int from = 0; from < ways.count(); from++) {
            for (int to = 0; to < ways.count(); to++) {
                if (from == to || !ways.mayFollow(from, to)) {
                    continue;
                }
                BoolVar arc = model.newBoolVar("");
                circuit.addArc(from, to, arc);
                int price = ways.cost(numbers, from, to);
                if (price > 0) {
                    cost.addTerm(arc, price);
                }
                if (from > 0 && to > 0) {
                    IntVar before = place[ways.operation().get(from)];
                    IntVar after = place[ways.operation().get(to)];
                    model.addEquality(after, LinearExpr.affine(before, 1, 1)).onlyEnforceIf(arc);
                }
            }
        }
        return cost;
    }
}
