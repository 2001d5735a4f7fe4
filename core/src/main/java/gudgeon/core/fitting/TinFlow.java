package gudgeon.core.fitting;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/** The most holes that can be filled, by augmenting: kinds of bolt on one side, kinds of hole on the other. */
final class TinFlow {
    private final boolean[][] legal;
    private final int[] need;
    private final int[] spare;
    private final int[] open;
    private final int[][] placed;

    TinFlow(boolean[][] legal, int[] have, int[] need) {
        this.legal = legal;
        this.need = need;
        spare = have.clone();
        open = need.clone();
        placed = new int[have.length][need.length];
        for (int hole = 0; hole < need.length; hole++) {
            while (open[hole] > 0 && augment(hole)) {
                open[hole]--;
            }
        }
    }

    boolean fills() {
        return Arrays.stream(open).allMatch(each -> each == 0)
                && Arrays.stream(spare).allMatch(each -> each >= 0);
    }

    /** Puts one more bolt into a kind of hole, moving others as needed. */
    private boolean augment(int hole) {
        int[] boltBefore = new int[need.length];
        int[] holeBefore = new int[spare.length];
        Arrays.fill(boltBefore, -2);
        Arrays.fill(holeBefore, -2);
        boltBefore[hole] = -1;
        Deque<Integer> waiting = new ArrayDeque<>(List.of(hole));
        while (!waiting.isEmpty()) {
            int at = waiting.remove();
            for (int bolt = 0; bolt < spare.length; bolt++) {
                if (legal[bolt][at] && holeBefore[bolt] == -2) {
                    holeBefore[bolt] = at;
                    if (spare[bolt] > 0) {
                        spare[bolt]--;
                        shift(bolt, holeBefore, boltBefore);
                        return true;
                    }
                    for (int other = 0; other < need.length; other++) {
                        if (placed[bolt][other] > 0 && boltBefore[other] == -2) {
                            boltBefore[other] = bolt;
                            waiting.add(other);
                        }
                    }
                }
            }
        }
        return false;
    }

    private void shift(int last, int[] holeBefore, int[] boltBefore) {
        int bolt = last;
        while (bolt >= 0) {
            int hole = holeBefore[bolt];
            placed[bolt][hole]++;
            int before = boltBefore[hole];
            if (before >= 0) {
                placed[before][hole]--;
            }
            bolt = before;
        }
    }

    /** Kinds of hole that together ask for more than all bolts that may go into them; none when all are filled. */
    List<Integer> unfilled() {
        boolean[] reached = new boolean[need.length];
        Deque<Integer> waiting = new ArrayDeque<>();
        for (int hole = 0; hole < need.length; hole++) {
            if (open[hole] > 0) {
                reached[hole] = true;
                waiting.add(hole);
            }
        }
        while (!waiting.isEmpty()) {
            int at = waiting.remove();
            for (int bolt = 0; bolt < spare.length; bolt++) {
                for (int other = 0; legal[bolt][at] && other < need.length; other++) {
                    if (placed[bolt][other] > 0 && !reached[other]) {
                        reached[other] = true;
                        waiting.add(other);
                    }
                }
            }
        }
        List<Integer> tooFew = new ArrayList<>();
        for (int hole = 0; hole < need.length; hole++) {
            if (reached[hole]) {
                tooFew.add(hole);
            }
        }
        return tooFew;
    }
}
