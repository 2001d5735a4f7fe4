package gudgeon.app.document;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Puts panels on a sheet, each as high up and as far left as it goes; of a few orders the one with the lowest sheet. */
final class PanelPacking {
    private static final double GAP = 16;

    private final double width;
    private final List<Slot> placed = new ArrayList<>();

    private PanelPacking(double width) {
        this.width = width;
    }

    /** A panel's size. */
    record Size(double width, double height) {}

    /** A panel's place; index into the sizes handed in. */
    record Slot(int index, double x, double y, Size size) {
        double right() {
            return x + size.width();
        }

        double bottom() {
            return y + size.height();
        }
    }

    /** Places in the order of the sizes. A panel wider than the sheet stands alone in its rows. */
    static List<Slot> pack(List<Size> sizes, double width) {
        List<Comparator<Integer>> orders = List.of(
                Comparator.comparingDouble(i -> -sizes.get(i).height()),
                Comparator.comparingDouble(i -> -sizes.get(i).width()),
                Comparator.comparingDouble(
                        i -> -sizes.get(i).height() * sizes.get(i).width()),
                Comparator.comparingInt(i -> i));
        return orders.stream()
                .map(order -> packed(sizes, width, order))
                .min(Comparator.comparingDouble(PanelPacking::height))
                .orElseThrow();
    }

    private static List<Slot> packed(List<Size> sizes, double width, Comparator<Integer> by) {
        PanelPacking packing = new PanelPacking(width);
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < sizes.size(); i++) {
            order.add(i);
        }
        order.sort(by);
        order.forEach(i -> packing.put(i, sizes.get(i)));
        packing.placed.sort(Comparator.comparingInt(Slot::index));
        return List.copyOf(packing.placed);
    }

    private static double height(List<Slot> slots) {
        return slots.stream().mapToDouble(Slot::bottom).max().orElse(0);
    }

    private void put(int index, Size size) {
        List<Double> xs = new ArrayList<>(List.of(0.0));
        List<Double> ys = new ArrayList<>(List.of(0.0));
        for (Slot slot : placed) {
            xs.add(slot.right() + GAP);
            ys.add(slot.bottom() + GAP);
        }
        Slot best = null;
        for (double y : ys) {
            for (double x : xs) {
                boolean fits = x == 0 || x + size.width() <= width;
                boolean better = best == null || y < best.y() || (y == best.y() && x < best.x());
                if (fits && better && free(x, y, size)) {
                    best = new Slot(index, x, y, size);
                }
            }
        }
        if (best == null) {
            throw new IllegalStateException("below everything there is always room");
        }
        placed.add(best);
    }

    private boolean free(double x, double y, Size size) {
        return placed.stream()
                .noneMatch(slot -> x < slot.right() + GAP
                        && slot.x() < x + size.width() + GAP
                        && y < slot.bottom() + GAP
                        && slot.y() < y + size.height() + GAP);
    }
}
