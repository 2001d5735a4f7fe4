package gudgeon.core.planning;

import gudgeon.core.engine.LiftingWay;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Why parts cannot be reached, for many at once: one sweep without each sort of obstacle tells which parts it alone keeps
 * back. Parts of one piece that the same obstacle keeps back get the same reason, worked out once.
 */
final class Hindrances {
    private final Standing standing;
    private final State full;
    private final Map<List<Object>, List<Blocked.Reason>> known = new HashMap<>();
    /** Off with the limit of each of the engine's ways of lifting, with hanging, with each barred action allowed. */
    private final List<BitSet> without = new ArrayList<>();

    Hindrances(Standing standing, State full) {
        this.standing = standing;
        this.full = full;
    }

    List<Blocked.Reason> of(int part) {
        full.refresh();
        if (without.isEmpty()) {
            sweep();
        }
        BitSet helps = new BitSet();
        for (int k = 0; k < without.size(); k++) {
            helps.set(k, without.get(k).get(part));
        }
        List<Object> sort = helps.isEmpty() ? List.of(part) : List.of(helps, full.piece[part]);
        return known.computeIfAbsent(sort, key -> diagnosed(part));
    }

    private List<Blocked.Reason> diagnosed(int part) {
        return new Diagnosis(standing.model(), standing.request(), standing.permitted(), EverySet.goal(part))
                .blocked(new BitSet())
                .reasons();
    }

    private void sweep() {
        Model model = standing.model();
        BitSet start = standing.reach().initial().done;
        for (LiftingWay way : model.engine.workplace().waysOfLifting()) {
            long limit = Model.milligrams(way.limitKilograms());
            without.add(off(new Reach(model, new Lifting(model, limit, false), start), standing.permitted()));
        }
        long limit = Model.heaviest(standing.request().means().ways());
        without.add(off(new Reach(model, new Lifting(model, limit, true), start), standing.permitted()));
        for (int a = 0; a < model.actions; a++) {
            if (!standing.permitted().get(a) && !start.get(a)) {
                BitSet more = (BitSet) standing.permitted().clone();
                more.set(a);
                without.add(off(standing.reach(), more));
            }
        }
    }

    private static BitSet off(Reach reach, BitSet permitted) {
        return EverySet.off(reach.sweep(permitted));
    }
}
