package gudgeon.app.desk;

import gudgeon.core.fitting.WeightFit;
import java.util.List;

/**
 * Which pistons, pins and rods go together, and what comes off.
 *
 * @param kinds each "pistons: 412.3 g, 411.0 g, ..."
 * @param allowed how many grams sets may differ when what comes off is worked out; empty for none
 */
public record WeightQuestion(List<String> kinds, String allowed) {
    private static final int MOST = 24;

    public WeightQuestion {
        kinds = List.copyOf(kinds);
    }

    /**
     * The answer.
     *
     * @param names of the kinds
     * @param weights_g by kind
     * @param allowed_g grams
     */
    public record Answer(List<String> names, List<List<Double>> weights_g, double allowed_g, WeightFit fit) {
        public Answer {
            names = List.copyOf(names);
            weights_g = weights_g.stream().map(List::copyOf).toList();
        }
    }

    /** Asks. @throws IllegalArgumentException when something cannot be read */
    public Answer ask(Written written) {
        List<Written.Named> read = kinds.stream()
                .map(text -> written.named("kind", text, 1, MOST, "pistons: 412.3 g, 411.0 g"))
                .toList();
        List<List<Double>> weights_g = read.stream()
                .map(kind -> kind.values().stream()
                        .map(text -> written.mass_g(kind.name(), text))
                        .toList())
                .toList();
        return new Answer(
                read.stream().map(Written.Named::name).toList(),
                weights_g,
                allowed.isBlank() ? 0 : written.mass_g("allowed", allowed),
                WeightFit.of(weights_g.stream().map(PairQuestion::sizes).toList()));
    }
}
