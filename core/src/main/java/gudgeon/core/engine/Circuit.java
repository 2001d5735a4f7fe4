package gudgeon.core.engine;

import gudgeon.core.quantity.Volume;
import java.util.List;
import java.util.Optional;

/**
 * A fluid, gas or electricity through parts. It is ready when <em>all</em> its make-safe operations are done and, if it has
 * any drains, <em>any one</em> of them.
 *
 * @param id ASCII, unique among circuits
 * @param kind what it carries
 * @param fluid what to buy and fill; empty when nothing is filled
 * @param capacity how much it holds; empty when nothing is filled or it is not known
 * @param makeSafe ids of ready operations, all needed
 * @param drains ids of ready operations, any one needed
 * @param hazards caution ids that stand in every step that opens it
 * @param bleed how air is got out of it on the way back; empty when it bleeds itself
 * @param contents how high it stands and where joints open it; empty when the file does not say
 */
public record Circuit(
        String id,
        String name,
        CircuitKind kind,
        String fluid,
        Optional<Volume> capacity,
        List<String> makeSafe,
        List<String> drains,
        List<String> hazards,
        String bleed,
        Optional<Contents> contents) {
    public Circuit {
        makeSafe = List.copyOf(makeSafe);
        drains = List.copyOf(drains);
        hazards = List.copyOf(hazards);
    }

    /** A circuit of which the file does not say how high it stands. */
    public Circuit(
            String id,
            String name,
            CircuitKind kind,
            String fluid,
            Optional<Volume> capacity,
            List<String> makeSafe,
            List<String> drains,
            List<String> hazards,
            String bleed) {
        this(id, name, kind, fluid, capacity, makeSafe, drains, hazards, bleed, Optional.empty());
    }
}
