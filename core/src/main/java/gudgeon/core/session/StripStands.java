package gudgeon.core.session;

import gudgeon.core.engine.Circuit;
import gudgeon.core.engine.CircuitKind;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Feature;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Part;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.ReadyKind;
import gudgeon.core.planning.StripPlan;
import gudgeon.core.planning.StripWalk;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How an engine would be left after each step of a strip. Where the file does not say what a part is made of, a surface that is
 * measured counts as iron or steel, which rusts.
 */
public final class StripStands {
    /** Kinds of feature whose surface is bare metal that must stay bright. */
    private static final List<String> BRIGHT = List.of("cylinder bore", "flatness", "shaft diameter", "lobe height");

    private final Engine engine;
    private final Set<String> covered;
    private final boolean hasCurrent;
    private final List<String> cutOff;

    /** @param covered ids of joints whose openings are covered already */
    public StripStands(Engine engine, List<String> covered) {
        this.engine = engine;
        this.covered = new HashSet<>(covered);
        List<Circuit> electric = engine.circuits().stream()
                .filter(circuit -> circuit.kind() == CircuitKind.ELECTRIC)
                .toList();
        this.hasCurrent = !electric.isEmpty();
        this.cutOff = electric.stream()
                .flatMap(circuit -> circuit.makeSafe().stream())
                .toList();
    }

    /** How it stands at a place of a walk. */
    public Stand at(StripWalk walk) {
        List<String> done = walk.done();
        Set<String> all = new HashSet<>(done);
        List<Stand.Unsafe> unsafe = new ArrayList<>();
        add(unsafe, Stand.Kind.LOOSE, walk.loose());
        boolean current = hasCurrent && !all.containsAll(cutOff);
        List<Ready> ready =
                done.stream().map(engine::findReady).flatMap(Optional::stream).toList();
        if (current) {
            add(unsafe, Stand.Kind.CRACKED_LOOSE, crackedLoose(ready, all));
            add(unsafe, Stand.Kind.PINS_AND_CURRENT, ids(ready, ReadyKind.PIN));
        }
        add(unsafe, Stand.Kind.ON_A_JACK, onAJack(ready, walk));
        return new Stand(unsafe, openings(done), bare(walk));
    }

    /** How it stands before the first of these operations and after each, done in this order. */
    public List<Stand> along(StripWalk start, List<StripPlan.Operation> operations) {
        List<Stand> stands = new ArrayList<>(List.of(at(start)));
        StripWalk walk = start;
        for (StripPlan.Operation operation : operations) {
            walk = walk.after(operation);
            stands.add(at(walk));
        }
        return stands;
    }

    private static void add(List<Stand.Unsafe> unsafe, Stand.Kind kind, List<String> about) {
        if (!about.isEmpty()) {
            unsafe.add(new Stand.Unsafe(kind, about));
        }
    }

    private static List<String> ids(List<Ready> ready, ReadyKind kind) {
        return ready.stream().filter(one -> one.kind() == kind).map(Ready::id).toList();
    }

    private static List<String> crackedLoose(List<Ready> ready, Set<String> done) {
        return ready.stream()
                .filter(one -> one.kind() == ReadyKind.CRACK_LOOSE)
                .flatMap(one -> one.joint().stream())
                .filter(joint -> !done.contains(joint))
                .toList();
    }

    /** Supports by a jack that still carry something; a jack with stands is no jack. */
    private static List<String> onAJack(List<Ready> ready, StripWalk walk) {
        return ready.stream()
                .filter(one -> one.kind() == ReadyKind.SUPPORT)
                .filter(one -> one.tools().stream().anyMatch(tool -> tool.matches("(?i).*\\bjacks?\\b.*")))
                .filter(one -> one.tools().stream().noneMatch(tool -> tool.matches("(?i).*\\bstands?\\b.*")))
                .filter(one -> one.effect().carries().stream().anyMatch(part -> !walk.isMoved(part)))
                .map(Ready::id)
                .toList();
    }

    /** Joints that are undone, stand open to a fluid, gas or fuel, and are not covered. */
    private List<String> openings(List<String> done) {
        return done.stream()
                .filter(id -> !covered.contains(id))
                .map(engine::findJoint)
                .flatMap(Optional::stream)
                .filter(joint -> isOpening(engine, joint))
                .map(Joint::id)
                .toList();
    }

    /** Whether dirt or rain gets in, or fuel out, where a joint is undone. */
    static boolean isOpening(Engine engine, Joint joint) {
        return joint.freedom().opens().stream().map(engine::circuit).anyMatch(circuit -> switch (circuit.kind()) {
            case COOLANT, OIL, FUEL, FUEL_HIGH_PRESSURE, FLUID, AIR, EXHAUST -> true;
            case VACUUM, ELECTRIC, REFRIGERANT, HIGH_VOLTAGE, AIRBAG -> false;
        });
    }

    private List<String> bare(StripWalk walk) {
        return engine.features().stream()
                .filter(feature -> mustStayBright(engine, feature))
                .filter(walk::isReachable)
                .map(Feature::id)
                .toList();
    }

    /** Whether a feature is a surface of bare metal that rusts and must not. */
    static boolean mustStayBright(Engine engine, Feature feature) {
        return BRIGHT.contains(feature.kind()) && feature.parts().stream()
                .map(engine::part)
                .map(Part::care)
                .anyMatch(care -> care.material().isEmpty()
                        || care.material().contains("iron")
                        || care.material().contains("steel"));
    }
}
