package gudgeon.core.planning;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Joints undone, ready operations done, parts moved; with the pieces that follow. Meanings: docs/planning.md. Cost of one
 * closure: rounds times the number of joints, with as many rounds as the longest chain of conditions.
 */
final class State {
    final Model model;
    final BitSet done;
    final BitSet moved;
    /** By part: the smallest part number of its piece. */
    final int[] piece;

    private final Frame frame;
    private boolean stale;

    /**
     * What the pieces are worked out from: parts that hang together in any case, and the rigid joints that may be undone.
     *
     * @param held by part: the smallest part number of those it hangs together with in any case
     * @param joints rigid joints that may be undone
     */
    record Frame(int[] held, int[] joints) {
        /** The frame of a search in which only some joints are ever undone, or are undone already. */
        static Frame of(Model model, BitSet undone) {
            State all = new State(model, undone);
            all.refresh();
            int[] joints = undone.stream()
                    .filter(a -> a < model.joints && !model.flexible[a])
                    .toArray();
            return new Frame(all.piece.clone(), joints);
        }

        /** The frame in which any rigid joint may be undone. */
        static Frame whole(Model model) {
            int[] apart = java.util.stream.IntStream.range(0, model.parts).toArray();
            int[] joints = java.util.stream.IntStream.range(0, model.joints)
                    .filter(j -> !model.flexible[j])
                    .toArray();
            return new Frame(apart, joints);
        }
    }

    State(Model model, BitSet done) {
        this(model, (BitSet) done.clone(), (BitSet) model.away.clone(), new int[model.parts], model.frame, true);
    }

    private State(Model model, BitSet done, BitSet moved, int[] piece, Frame frame, boolean stale) {
        this.model = model;
        this.done = done;
        this.moved = moved;
        this.piece = piece;
        this.frame = frame;
        this.stale = stale;
    }

    State copy() {
        return new State(model, (BitSet) done.clone(), (BitSet) moved.clone(), piece.clone(), frame, stale);
    }

    /** A state with the given sets; pieces are computed when first asked for. */
    static State of(Model model, BitSet done, BitSet moved) {
        return of(model, done, moved, model.frame);
    }

    static State of(Model model, BitSet done, BitSet moved, Frame frame) {
        BitSet all = (BitSet) moved.clone();
        all.or(model.away);
        return new State(model, (BitSet) done.clone(), all, new int[model.parts], frame, true);
    }

    void perform(int action) {
        done.set(action);
        stale |= action < model.joints && !model.flexible[action];
    }

    /** Brings {@link #piece} up to date. */
    void refresh() {
        if (!stale) {
            return;
        }
        stale = false;
        System.arraycopy(frame.held, 0, piece, 0, piece.length);
        for (int j : frame.joints) {
            if (!done.get(j)) {
                int[] joined = model.jointParts[j];
                for (int k = 1; k < joined.length; k++) {
                    union(joined[0], joined[k]);
                }
            }
        }
        for (int p = 0; p < piece.length; p++) {
            piece[p] = root(p);
        }
    }

    private void union(int first, int second) {
        int a = root(first);
        int b = root(second);
        if (a != b) {
            piece[Math.max(a, b)] = Math.min(a, b);
        }
    }

    private int root(int part) {
        int p = part;
        while (piece[p] != p) {
            piece[p] = piece[piece[p]];
            p = piece[p];
        }
        return p;
    }

    /** Whether an action's access, circuits and needs hold. Licence is the caller's business. */
    boolean free(int action) {
        for (int need : model.needs[action]) {
            if (!done.get(need)) {
                return false;
            }
        }
        for (int circuit : model.opens[action]) {
            if (!circuitReady(circuit)) {
                return false;
            }
        }
        int judge = model.judgedAt[action];
        return holds(model.access[action], judge < 0 ? null : model.jointParts[judge]);
    }

    private boolean circuitReady(int circuit) {
        for (int safe : model.makeSafe[circuit]) {
            if (!done.get(safe)) {
                return false;
            }
        }
        int[] drains = model.drains[circuit];
        for (int drain : drains) {
            if (done.get(drain)) {
                return true;
            }
        }
        return drains.length == 0;
    }

    /**
     * Whether a condition holds.
     *
     * @param judge parts that part literals must be out of the way of; null when a part literal means "moved"
     */
    boolean holds(int[][][] clauses, int @org.jspecify.annotations.Nullable [] judge) {
        for (int[][] clause : clauses) {
            if (!anyHolds(clause, judge)) {
                return false;
            }
        }
        return true;
    }

    private boolean anyHolds(int[][] alternatives, int @org.jspecify.annotations.Nullable [] judge) {
        for (int[] alternative : alternatives) {
            boolean all = true;
            for (int literal : alternative) {
                all &= literal < 0 ? done.get(~literal) : away(literal, judge);
            }
            if (all) {
                return true;
            }
        }
        return false;
    }

    private boolean away(int part, int @org.jspecify.annotations.Nullable [] judge) {
        boolean partMoved = moved.get(part);
        if (judge == null) {
            return partMoved;
        }
        for (int other : judge) {
            if (piece[other] == piece[part] || !(partMoved || moved.get(other))) {
                return false;
            }
        }
        return true;
    }

    /** Parts that some chain of intact joints of any kind links to the base. */
    BitSet linked() {
        BitSet seen = new BitSet(model.parts);
        int[] queue = new int[model.parts];
        int tail = 0;
        queue[tail++] = model.base;
        seen.set(model.base);
        for (int head = 0; head < tail; head++) {
            for (int j : model.jointsOfPart[queue[head]]) {
                if (!done.get(j)) {
                    for (int p : model.jointParts[j]) {
                        if (!seen.get(p)) {
                            seen.set(p);
                            queue[tail++] = p;
                        }
                    }
                }
            }
        }
        return seen;
    }

    /** Parts of pieces that are settled: base, carried, or resting on a settled piece. */
    BitSet settled() {
        refresh();
        BitSet settledPieces = new BitSet(model.parts);
        settledPieces.set(piece[model.base]);
        for (int a = done.nextSetBit(model.joints); a >= 0; a = done.nextSetBit(a + 1)) {
            for (int p : model.carries[a]) {
                settledPieces.set(piece[p]);
            }
        }
        boolean again = true;
        while (again) {
            again = false;
            for (int j = done.nextSetBit(0); j >= 0 && j < model.joints; j = done.nextSetBit(j + 1)) {
                if (model.rests[j]) {
                    again |= spread(settledPieces, model.jointParts[j]);
                }
            }
        }
        BitSet settled = new BitSet(model.parts);
        for (int p = 0; p < piece.length; p++) {
            settled.set(p, settledPieces.get(piece[p]));
        }
        return settled;
    }

    private boolean spread(BitSet settledPieces, int[] joined) {
        boolean any = false;
        boolean all = true;
        for (int p : joined) {
            any |= settledPieces.get(piece[p]);
            all &= settledPieces.get(piece[p]);
        }
        if (any && !all) {
            for (int p : joined) {
                settledPieces.set(piece[p]);
            }
            return true;
        }
        return false;
    }

    /** Parts of loose pieces, those in {@code tolerated} left out. */
    BitSet loose(BitSet tolerated) {
        BitSet loose = settled();
        loose.or(moved);
        loose.flip(0, model.parts);
        loose.andNot(tolerated);
        return loose;
    }

    int[] partsOfPiece(int representative) {
        int[] result = new int[model.parts];
        int count = 0;
        for (int p = 0; p < piece.length; p++) {
            if (piece[p] == representative) {
                result[count++] = p;
            }
        }
        return Arrays.copyOf(result, count);
    }
}
