package gudgeon.core.session;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Feature;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Literal;
import gudgeon.core.planning.BuildPlan;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** How an engine would be left after each step of the way back. */
public final class BuildStands {
    private final Engine engine;
    private final List<BuildPlan.Operation> plan;
    private final Set<String> covered;

    /** @param covered ids of joints whose openings are covered already */
    public BuildStands(Engine engine, BuildPlan plan, List<String> covered) {
        this.engine = engine;
        this.plan = plan.operations();
        this.covered = new HashSet<>(covered);
    }

    /**
     * How it stands when these steps are done.
     *
     * @param done ids of steps
     */
    public Stand at(Set<String> done) {
        List<Stand.Unsafe> unsafe = new ArrayList<>();
        add(unsafe, Stand.Kind.SEALANT_OPEN, sealed(done));
        add(unsafe, Stand.Kind.NOT_HELD, notHeld(done));
        add(unsafe, Stand.Kind.HALF_TIGHTENED, halfTightened(done));
        return new Stand(unsafe, openings(done), bare(done));
    }

    /** How it stands before the first of these steps and after each. */
    public List<Stand> along(Set<String> done, List<BuildPlan.Operation> steps) {
        Set<String> so = new LinkedHashSet<>(done);
        List<Stand> stands = new ArrayList<>(List.of(at(so)));
        for (BuildPlan.Operation step : steps) {
            so.add(step.id());
            stands.add(at(so));
        }
        return stands;
    }

    private static void add(List<Stand.Unsafe> unsafe, Stand.Kind kind, List<String> about) {
        if (!about.isEmpty()) {
            unsafe.add(new Stand.Unsafe(kind, about));
        }
    }

    private boolean isLeft(Set<String> done, String joint, BuildPlan.Kind... kinds) {
        List<BuildPlan.Kind> wanted = List.of(kinds);
        return plan.stream()
                .anyMatch(step -> step.subject().ref().equals(joint)
                        && wanted.contains(step.kind())
                        && !done.contains(step.id()));
    }

    private List<String> sealed(Set<String> done) {
        return plan.stream()
                .filter(step -> step.kind() == BuildPlan.Kind.SEAL && done.contains(step.id()))
                .map(step -> step.subject().ref())
                .filter(joint -> isLeft(done, joint, BuildPlan.Kind.SNUG))
                .distinct()
                .toList();
    }

    /** Parts that were placed and that no joint snugged since holds, where one will. */
    private List<String> notHeld(Set<String> done) {
        List<String> parts = new ArrayList<>();
        for (BuildPlan.Operation place : plan) {
            if (place.kind() != BuildPlan.Kind.PLACE || !done.contains(place.id())) {
                continue;
            }
            List<BuildPlan.Operation> holding = plan.stream()
                    .filter(step -> step.kind() == BuildPlan.Kind.SNUG)
                    .filter(step -> step.subject().parts().stream()
                            .anyMatch(place.subject().parts()::contains))
                    .toList();
            if (!holding.isEmpty() && holding.stream().noneMatch(step -> done.contains(step.id()))) {
                parts.addAll(place.subject().parts());
            }
        }
        return parts;
    }

    private List<String> halfTightened(Set<String> done) {
        return plan.stream()
                .filter(step -> step.kind() == BuildPlan.Kind.SNUG && done.contains(step.id()))
                .map(step -> step.subject().ref())
                .filter(joint ->
                        isLeft(done, joint, BuildPlan.Kind.STAGE, BuildPlan.Kind.ANGLE, BuildPlan.Kind.TIGHTEN))
                .distinct()
                .toList();
    }

    private List<String> openings(Set<String> done) {
        return plan.stream()
                .filter(step -> step.kind() == BuildPlan.Kind.SNUG && !done.contains(step.id()))
                .map(step -> step.subject().ref())
                .filter(joint -> !covered.contains(joint))
                .map(engine::findJoint)
                .flatMap(Optional::stream)
                .filter(joint -> StripStands.isOpening(engine, joint))
                .map(Joint::id)
                .distinct()
                .toList();
    }

    /** Bright surfaces in whose way nothing was put back yet. */
    private List<String> bare(Set<String> done) {
        Set<String> away = new HashSet<>();
        Set<String> undone = new HashSet<>();
        for (BuildPlan.Operation step : plan) {
            if (!done.contains(step.id())) {
                switch (step.kind()) {
                    case PLACE -> away.addAll(step.subject().parts());
                    case SNUG -> undone.add(step.subject().ref());
                    default -> {}
                }
            }
        }
        return engine.features().stream()
                .filter(feature -> StripStands.mustStayBright(engine, feature))
                .filter(feature -> feature.access().holds(literal -> switch (literal) {
                    case Literal.PartAway part -> away.contains(part.id());
                    case Literal.JointUndone joint -> undone.contains(joint.id());
                }))
                .map(Feature::id)
                .toList();
    }
}
