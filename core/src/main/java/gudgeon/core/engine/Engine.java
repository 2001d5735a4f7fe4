package gudgeon.core.engine;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One type of engine where it stands. Valid by construction only in that every list is unmodifiable and ids are unique;
 * the deeper rules (everything resolves, everything can be reached) are the checker's.
 *
 * @param identity what it is called and how it is laid out
 * @param workplace base, zones, ways of lifting, the cost of changing tools
 * @param precedences order constraints beside the conditions of joints, written and derived
 */
public record Engine(
        Identity identity,
        Workplace workplace,
        List<Part> parts,
        List<Joint> joints,
        List<Circuit> circuits,
        List<Ready> ready,
        List<Feature> features,
        BuildRules rules) {
    public Engine {
        parts = List.copyOf(parts);
        joints = List.copyOf(joints);
        circuits = List.copyOf(circuits);
        ready = List.copyOf(ready);
        features = List.copyOf(features);
        Map<String, Object> seen = new HashMap<>();
        parts.forEach(part -> claim(seen, part.id(), part));
        joints.forEach(joint -> claim(seen, joint.id(), joint));
        ready.forEach(operation -> claim(seen, operation.id(), operation));
    }

    private static void claim(Map<String, Object> seen, String id, Object owner) {
        if (seen.put(id, owner) != null) {
            throw new IllegalArgumentException(
                    "the id " + id + " stands twice among parts, joints and ready operations");
        }
    }

    /**
     * @param sha256 hash of the file's bytes in lower-case hexadecimal; empty when it was not read from a file
     * @param facts further facts as written: cycle, bore, stroke, firing order, views
     * @param geometry its shape, for arithmetic
     */
    public record Identity(
            String id,
            String name,
            int format,
            String sha256,
            int cylinders,
            Map<String, String> facts,
            Geometry geometry) {
        public Identity {
            facts = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(facts));
        }

        /** An engine of whose shape nothing is known. */
        public Identity(String id, String name, int format, String sha256, int cylinders, Map<String, String> facts) {
            this(id, name, format, sha256, cylinders, facts, Geometry.UNKNOWN);
        }
    }

    /**
     * @param base id of the part that stays put
     * @param startZone where every plan starts and ends
     * @param toolChangeSeconds time to take up one tool that is not in hand
     */
    public record Workplace(
            String base, String startZone, long toolChangeSeconds, List<Zone> zones, List<LiftingWay> waysOfLifting) {
        public Workplace {
            zones = List.copyOf(zones);
            waysOfLifting = List.copyOf(waysOfLifting);
        }
    }

    /**
     * Order constraints of the strip, checks of the way back, and how far the engine can be opened.
     *
     * @param levels from the outside inward, each depth at most once
     */
    public record BuildRules(List<Precedence> precedences, List<Check> checks, List<Level> levels) {
        public BuildRules {
            precedences = List.copyOf(precedences);
            checks = List.copyOf(checks);
            levels = List.copyOf(levels);
        }

        /** Without levels. */
        public BuildRules(List<Precedence> precedences, List<Check> checks) {
            this(precedences, checks, List.of());
        }
    }

    public Optional<Part> findPart(String id) {
        return parts.stream().filter(part -> part.id().equals(id)).findFirst();
    }

    public Optional<Joint> findJoint(String id) {
        return joints.stream().filter(joint -> joint.id().equals(id)).findFirst();
    }

    public Optional<Ready> findReady(String id) {
        return ready.stream().filter(operation -> operation.id().equals(id)).findFirst();
    }

    public Optional<Feature> findFeature(String id) {
        return features.stream().filter(feature -> feature.id().equals(id)).findFirst();
    }

    public Part part(String id) {
        return findPart(id).orElseThrow(() -> unknown("part", id));
    }

    public Joint joint(String id) {
        return findJoint(id).orElseThrow(() -> unknown("joint", id));
    }

    public Ready ready(String id) {
        return findReady(id).orElseThrow(() -> unknown("ready operation", id));
    }

    public Circuit circuit(String id) {
        return circuits.stream()
                .filter(circuit -> circuit.id().equals(id))
                .findFirst()
                .orElseThrow(() -> unknown("circuit", id));
    }

    public Zone zone(String id) {
        return workplace.zones().stream()
                .filter(zone -> zone.id().equals(id))
                .findFirst()
                .orElseThrow(() -> unknown("zone", id));
    }

    private static IllegalArgumentException unknown(String what, String id) {
        return new IllegalArgumentException("no " + what + " is called " + id);
    }
}
