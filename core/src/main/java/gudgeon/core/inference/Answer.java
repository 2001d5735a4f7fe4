package gudgeon.core.inference;

import java.util.Map;

/** What a network says to evidence. */
public sealed interface Answer {
    /** The evidence contradicts itself: its chance is zero. */
    record Impossible() implements Answer {}

    /**
     * What is believed now.
     *
     * @param chance chance of the evidence, above 0
     * @param network the network that was asked
     * @param beliefs for each variable the chances of its states
     */
    record Believed(double chance, Network network, Map<String, double[]> beliefs) implements Answer {
        /** Chance of one state. */
        public double chance(String variable, String state) {
            int at = network.variable(variable).index(state);
            double[] belief = beliefs.get(variable);
            if (belief == null) {
                throw new IllegalArgumentException("nothing is believed about " + variable);
            }
            return belief[at];
        }
    }
}
