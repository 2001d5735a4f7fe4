package gudgeon.app.format;

import gudgeon.core.finding.EngineFacts;
import gudgeon.core.finding.Observation;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A case: an engine as far as it matters for finding faults, and what was seen and measured on it.
 *
 * @param id of the case; empty when it has none
 * @param facts the engine
 * @param observations in file order
 * @param factors on the chances of faults, by id
 * @param tools that are owned; empty when nothing was said
 * @param asks what should be told to make the answer better
 * @param remarks what was taken for granted, and what contradicts itself, with its place
 */
public record FindingCase(
        String id,
        EngineFacts facts,
        List<Observation> observations,
        Map<String, Double> factors,
        Set<String> tools,
        List<Ask> asks,
        List<Problem> remarks) {
    public FindingCase {
        observations = List.copyOf(observations);
        factors = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(factors));
        tools = java.util.Collections.unmodifiableSet(new java.util.LinkedHashSet<>(tools));
        asks = List.copyOf(asks);
        remarks = List.copyOf(remarks);
    }

    /**
     * Something that should be told.
     *
     * @param what the thing: orifice, supply, oil, firing, compression
     * @param cylinder from 1; 0 for the engine
     * @param assumed what is assumed until then
     */
    public record Ask(String what, int cylinder, String assumed) {}
}
