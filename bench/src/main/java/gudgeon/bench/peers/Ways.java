package gudgeon.bench.peers;

import gudgeon.core.planning.Sequencer;
import gudgeon.core.planning.Sequencing;
import java.util.ArrayList;
import java.util.List;

/**
 * A problem with its ways of doing operations numbered: what the models of all general solvers are made of. Way 0 is the
 * beginning and the end.
 *
 * @param operation by way: its operation; -1 for way 0
 * @param mode by way: context and needs; the start context for way 0
 * @param byOperation by operation: its ways
 */
record Ways(List<Integer> operation, List<Sequencing.Mode> mode, List<List<Integer>> byOperation) {
    static Ways of(Sequencer.Numbers numbers) {
        List<Integer> operation = new ArrayList<>(List.of(-1));
        List<Sequencing.Mode> mode = new ArrayList<>(List.of(new Sequencing.Mode(numbers.start(), List.of())));
        List<List<Integer>> byOperation = new ArrayList<>();
        for (int o = 0; o < numbers.modes().size(); o++) {
            List<Integer> own = new ArrayList<>();
            for (Sequencing.Mode way : numbers.modes().get(o)) {
                own.add(mode.size());
                mode.add(way);
                operation.add(o);
            }
            byOperation.add(own);
        }
        return new Ways(operation, mode, byOperation);
    }

    int count() {
        return mode.size();
    }

    boolean several(int way) {
        return way > 0 && byOperation.get(operation.get(way)).size() > 1;
    }

    /** Cost of one way right after another. */
    int cost(Sequencer.Numbers numbers, int from, int to) {
        int at = mode.get(from).context();
        return to == 0 ? numbers.leave()[at] : numbers.change()[at][mode.get(to).context()];
    }

    /** Whether one way can come right after another. */
    boolean mayFollow(int from, int to) {
        return from == 0
                || to == 0
                || (!operation.get(from).equals(operation.get(to))
                        && !mode.get(from).needs().contains(operation.get(to)));
    }
}
