package gudgeon.core.planning;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Which sets of pieces can be moved together. Single pieces first; unions only where a lift condition or a flexible joint
 * asks for another piece, which finds every set that no smaller one makes superfluous: any set that can be moved
 * contains, around each of its pieces, the set that this search builds.
 */
final class Lifting {
    private final Model model;
    private final long limit;
    private final boolean anythingHangs;

    Lifting(Model model, long limitMilligrams, boolean anythingHangs) {
        this.model = model;
        this.limit = limitMilligrams;
        this.anythingHangs = anythingHangs;
    }

    /** Moves everything that can be moved; returns whether anything was. */
    boolean close(State state) {
        state.refresh();
        boolean any = false;
        List<BitSet> candidates = singles(state);
        for (BitSet set = movable(state, candidates); set != null; set = movable(state, candidates)) {
            state.moved.or(set);
            candidates.removeIf(candidate -> state.moved.get(candidate.nextSetBit(0)));
            any = true;
        }
        return any;
    }

    /** Single pieces that can be moved, each also once the others have been; else one larger set, or null. */
    private @org.jspecify.annotations.Nullable BitSet movable(State state, List<BitSet> candidates) {
        BitSet together = new BitSet();
        for (BitSet candidate : candidates) {
            if (requirement(state, candidate) == SATISFIED) {
                together.or(candidate);
            }
        }
        if (!together.isEmpty()) {
            return together;
        }
        if (candidates.size() > 1) {
            for (BitSet candidate : candidates) {
                BitSet found = grow(state, candidate);
                if (found != null) {
                    return found;
                }
            }
        }
        return null;
    }

    /** One minimal set that can be moved, or an empty array. */
    int[] next(State state) {
        state.refresh();
        List<BitSet> candidates = singles(state);
        for (BitSet candidate : candidates) {
            if (requirement(state, candidate) == SATISFIED) {
                return candidate.stream().toArray();
            }
        }
        if (candidates.size() > 1) {
            for (BitSet candidate : candidates) {
                BitSet found = grow(state, candidate);
                if (found != null) {
                    return found.stream().toArray();
                }
            }
        }
        return new int[0];
    }

    /** All minimal sets that can be moved now, one for each piece that is in any. */
    List<int[]> all(State state) {
        state.refresh();
        List<int[]> sets = new ArrayList<>();
        List<BitSet> seen = new ArrayList<>();
        for (BitSet candidate : singles(state)) {
            BitSet found = grow(state, candidate);
            if (found != null && !seen.contains(found)) {
                seen.add(found);
                sets.add(found.stream().toArray());
            }
        }
        return sets;
    }

    private List<BitSet> singles(State state) {
        List<BitSet> candidates = new ArrayList<>();
        int basePiece = state.piece[model.base];
        BitSet[] byPiece = new BitSet[model.parts];
        for (int p = 0; p < model.parts; p++) {
            int representative = state.piece[p];
            if (representative != basePiece && !state.moved.get(representative)) {
                BitSet members = byPiece[representative];
                if (members == null) {
                    members = new BitSet(model.parts);
                    byPiece[representative] = members;
                    candidates.add(members);
                }
                members.set(p);
            }
        }
        return candidates;
    }

    private static final int[][] SATISFIED = new int[0][];
    private static final int[][] IMPOSSIBLE = new int[0][];

    private @org.jspecify.annotations.Nullable BitSet grow(State state, BitSet set) {
        int[][] choices = requirement(state, set);
        if (choices == SATISFIED) {
            return set;
        }
        for (int[] parts : choices) {
            BitSet larger = withPieces(state, set, parts);
            if (larger != null) {
                BitSet found = grow(state, larger);
                if (found != null) {
                    return found;
                }
            }
        }
        return null;
    }

    private @org.jspecify.annotations.Nullable BitSet withPieces(State state, BitSet set, int[] parts) {
        BitSet larger = (BitSet) set.clone();
        for (int part : parts) {
            if (state.piece[part] == state.piece[model.base]) {
                return null;
            }
            if (!larger.get(part)) {
                for (int p : state.partsOfPiece(state.piece[part])) {
                    larger.set(p);
                }
            }
        }
        return larger;
    }

    /**
     * What a set still lacks: {@link #SATISFIED}, or the choices of parts to take in for its first unmet requirement, of
     * which there may be none.
     */
    private int[][] requirement(State state, BitSet set) {
        long total = mass(set);
        if (total > limit) {
            return IMPOSSIBLE;
        }
        for (int p = set.nextSetBit(0); p >= 0; p = set.nextSetBit(p + 1)) {
            for (int[][] clause : model.lift[p]) {
                int[][] choices = unmet(state, set, clause);
                if (choices != SATISFIED) {
                    return choices;
                }
            }
            for (int j : model.jointsOfPart[p]) {
                if (model.flexible[j] && !state.done.get(j) && !carries(state, j, total)) {
                    int[] outside = outside(state, set, j);
                    if (outside.length > 0) {
                        return new int[][] {outside};
                    }
                }
            }
        }
        return SATISFIED;
    }

    private int[][] unmet(State state, BitSet set, int[][] clause) {
        List<int[]> choices = new ArrayList<>();
        for (int[] alternative : clause) {
            boolean possible = true;
            List<Integer> missing = new ArrayList<>();
            for (int literal : alternative) {
                if (literal < 0) {
                    possible &= state.done.get(~literal);
                } else if (!set.get(literal) && !state.moved.get(literal)) {
                    missing.add(literal);
                }
            }
            if (possible && missing.isEmpty()) {
                return SATISFIED;
            }
            if (possible) {
                choices.add(missing.stream().mapToInt(Integer::intValue).toArray());
            }
        }
        return choices.isEmpty() ? IMPOSSIBLE : choices.toArray(int[][]::new);
    }

    /** Whether an intact flexible joint carries a mass hanging on it. */
    private boolean carries(State state, int joint, long milligrams) {
        return anythingHangs
                || model.holds[joint] >= milligrams
                || (model.strap[joint] >= 0 && state.done.get(model.strap[joint]));
    }

    private int[] outside(State state, BitSet set, int joint) {
        int[] joined = model.jointParts[joint];
        int count = 0;
        int[] result = new int[joined.length];
        for (int p : joined) {
            if (!set.get(p) && !state.moved.get(p)) {
                result[count++] = p;
            }
        }
        return java.util.Arrays.copyOf(result, count);
    }

    long mass(BitSet set) {
        long total = 0;
        for (int p = set.nextSetBit(0); p >= 0; p = set.nextSetBit(p + 1)) {
            total += model.mass[p];
        }
        return total;
    }
}
