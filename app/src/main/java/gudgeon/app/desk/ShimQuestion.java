package gudgeon.app.desk;

import gudgeon.core.fitting.Aim;
import gudgeon.core.fitting.ShimFit;
import java.util.List;

/**
 * Which shim goes to which valve.
 *
 * @param valves each "inlet 1: clearance, shim", and the valve's own range when it has one
 * @param wanted range of the clearance of the others; empty when every valve has its own
 * @param best best clearance; empty for the middle of the range
 * @param box spare shims
 * @param shop sizes that can be bought
 */
public record ShimQuestion(List<String> valves, String wanted, String best, List<String> box, List<String> shop) {
    public ShimQuestion {
        valves = List.copyOf(valves);
        box = List.copyOf(box);
        shop = List.copyOf(shop);
    }

    /** The answer. @param valves as read */
    public record Answer(List<ShimFit.Valve> valves, ShimFit fit) {
        public Answer {
            valves = List.copyOf(valves);
        }
    }

    /** Asks. @throws IllegalArgumentException when something cannot be read */
    public Answer ask(Written written) {
        List<ShimFit.Valve> read =
                valves.stream().map(each -> valve(each, written)).toList();
        return new Answer(read, ShimFit.of(read, written.lengths_mm("box", box), written.lengths_mm("shop", shop)));
    }

    private ShimFit.Valve valve(String text, Written written) {
        Written.Named named = written.named("valve", text, 2, 3, "inlet 1: 0.10 mm, 2.70 mm");
        String range = named.values().size() == 3 ? named.values().get(2) : wanted;
        if (range.isBlank()) {
            throw new IllegalArgumentException(
                    "wanted: valve " + named.name() + " has no range; say one for all, like 0.15 mm to 0.25 mm");
        }
        Aim aim = written.aim("wanted", range, named.values().size() == 3 ? "" : best);
        return new ShimFit.Valve(
                named.name(),
                written.length_mm("clearance of " + named.name(), named.values().get(0)),
                written.length_mm("shim of " + named.name(), named.values().get(1)),
                aim);
    }
}
