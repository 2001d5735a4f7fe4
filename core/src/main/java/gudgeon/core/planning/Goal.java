package gudgeon.core.planning;

import gudgeon.core.engine.Feature;
import java.util.BitSet;
import java.util.List;

/**
 * What a search must reach: the target of the request, and what branching has added to it. Monotone in the state.
 *
 * @param off parts to be off and moved
 * @param moved parts to be moved
 * @param actions joints and ready operations to be done
 * @param measures features to be reachable
 */
record Goal(BitSet off, BitSet moved, BitSet actions, List<Measure> measures) {
    record Measure(int[][][] access, int[] parts) {}

    static Goal of(Model model, StripRequest.Target target) {
        BitSet off = new BitSet();
        target.off().forEach(id -> off.set(model.part(id)));
        BitSet moved = (BitSet) off.clone();
        target.aside().forEach(id -> moved.set(model.part(id)));
        BitSet actions = new BitSet();
        target.open().forEach(id -> actions.set(openable(model, id)));
        List<Measure> measures =
                target.measure().stream().map(id -> measure(model, id)).toList();
        return new Goal(off, moved, actions, measures);
    }

    private static int openable(Model model, String id) {
        int action = model.action(id);
        if (action >= model.joints) {
            throw new IllegalArgumentException("no joint is called " + id);
        }
        return action;
    }

    private static Measure measure(Model model, String id) {
        Feature feature = model.engine.findFeature(id)
                .orElseThrow(() -> new IllegalArgumentException("no feature is called " + id));
        int[] parts = feature.parts().stream().mapToInt(model::part).toArray();
        return new Measure(model.compile(feature.access()), parts);
    }

    Goal withMoved(BitSet more) {
        BitSet larger = (BitSet) moved.clone();
        larger.or(more);
        return new Goal(off, larger, actions, measures);
    }

    Goal withAction(int action) {
        BitSet larger = (BitSet) actions.clone();
        larger.set(action);
        return new Goal(off, moved, larger, measures);
    }

    boolean reached(State state) {
        if (!contains(state.moved, moved) || !contains(state.done, actions)) {
            return false;
        }
        state.refresh();
        for (Measure measure : measures) {
            if (!state.holds(measure.access, measure.parts)) {
                return false;
            }
        }
        return off.isEmpty() || !state.linked().intersects(off);
    }

    private static boolean contains(BitSet whole, BitSet part) {
        BitSet missing = (BitSet) part.clone();
        missing.andNot(whole);
        return missing.isEmpty();
    }
}
