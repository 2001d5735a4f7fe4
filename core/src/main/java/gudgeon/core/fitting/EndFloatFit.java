package gudgeon.core.fitting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Which shims or thrust washers give an end float: thicker ones take it up. One or several may lie on each other.
 *
 * @param before how good the float is as it comes
 * @param choices stacks by how near they come to the best, fewer pieces first among equals; those outside the limits only when none
 *     is inside
 */
public record EndFloatFit(Aim.Quality before, List<Stack> choices) {
    private static final int SHOWN = 5;

    public EndFloatFit {
        choices = List.copyOf(choices);
    }

    /**
     * Pieces laid on each other.
     *
     * @param pieces_mm thicknesses, ascending
     * @param float_mm what the float becomes
     * @param allowed whether that is within the limits
     */
    public record Stack(List<Double> pieces_mm, double float_mm, boolean allowed) {
        public Stack {
            pieces_mm = List.copyOf(pieces_mm);
        }
    }

    /**
     * Chooses.
     *
     * @param float_mm as measured
     * @param present_mm thickness of all that lay there then; 0 when nothing did
     * @param sizes_mm thicknesses to choose from, each as often as wanted
     * @param most how many may lie on each other, 1 to 4
     */
    public static EndFloatFit of(double float_mm, double present_mm, List<Double> sizes_mm, int most, Aim aim) {
        if (most < 1 || most > 4 || sizes_mm.isEmpty() || sizes_mm.stream().anyMatch(size -> !(size > 0))) {
            throw new IllegalArgumentException("one to four pieces are laid on each other, of sizes above 0");
        }
        List<Double> sizes = sizes_mm.stream().distinct().sorted().toList();
        List<Stack> all = new ArrayList<>();
        add(all, new ArrayList<>(), 0, sizes, most, float_mm + present_mm, aim);
        boolean any = all.stream().anyMatch(Stack::allowed);
        return new EndFloatFit(
                Aim.Quality.of(aim, float_mm),
                all.stream()
                        .filter(stack -> stack.allowed() || !any)
                        .sorted(Comparator.comparingDouble(
                                        (Stack stack) -> Math.rint(aim.off_um(stack.float_mm()) * 1e3))
                                .thenComparingInt(stack -> stack.pieces_mm().size()))
                        .limit(SHOWN)
                        .toList());
    }

    private static void add(
            List<Stack> all, List<Double> stack, int from, List<Double> sizes, int most, double room_mm, Aim aim) {
        if (!stack.isEmpty()) {
            double left_mm =
                    room_mm - stack.stream().mapToDouble(Double::doubleValue).sum();
            all.add(new Stack(stack, left_mm, aim.holds(left_mm)));
        }
        if (stack.size() < most) {
            for (int size = from; size < sizes.size(); size++) {
                stack.add(sizes.get(size));
                add(all, stack, size, sizes, most, room_mm, aim);
                stack.removeLast();
            }
        }
    }
}
