package gudgeon.core.planning;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Ready;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/** Random strips of an engine: what was done, in which order, before the way back begins. */
record RandomStrip(Engine engine, Random random, boolean wild) {
    /** A random strip that keeps every definition of docs/planning.md, loose pieces lifted at once. */
    static List<BuildRequest.Step> careful(Engine engine, long seed) {
        return new RandomStrip(engine, new Random(seed), false).steps();
    }

    /** A random strip that keeps none: what a book may tell. */
    static List<BuildRequest.Step> wild(Engine engine, long seed) {
        return new RandomStrip(engine, new Random(seed), true).steps();
    }

    private List<BuildRequest.Step> steps() {
        BuildWorld world = new BuildWorld(engine);
        List<BuildRequest.Step> steps = new ArrayList<>();
        Set<String> tolerated = world.loose();
        int wanted = 3 + random.nextInt(engine.joints().size() * 2);
        for (int attempt = 0; attempt < 200 && steps.size() < wanted; attempt++) {
            List<BuildRequest.Step> next = random.nextInt(3) == 0 ? lift(world) : act(world);
            BuildWorld then = world.copy();
            next.forEach(step -> apply(then, step));
            List<BuildRequest.Step> all = new ArrayList<>(next);
            while (!settled(then, tolerated) && all.size() < 12) {
                List<BuildRequest.Step> more = liftLoose(then, tolerated);
                if (more.isEmpty()) {
                    break;
                }
                more.forEach(step -> apply(then, step));
                all.addAll(more);
            }
            if (settled(then, tolerated) || wild) {
                all.forEach(step -> apply(world, step));
                steps.addAll(all);
            }
        }
        return steps;
    }

    private static boolean settled(BuildWorld world, Set<String> tolerated) {
        return tolerated.containsAll(world.loose());
    }

    private void apply(BuildWorld world, BuildRequest.Step step) {
        if (step.kind() == StripPlan.Kind.LIFT) {
            world.away.addAll(step.parts());
        } else if (engine.findJoint(step.id()).isPresent()) {
            world.open.add(step.id());
        } else {
            world.ready.add(step.id());
        }
    }

    private List<BuildRequest.Step> act(BuildWorld world) {
        List<BuildRequest.Step> free = new ArrayList<>();
        for (Joint joint : engine.joints()) {
            boolean may = wild
                    || (world.free(joint) && world.heldBy(joint.freedom().hold()));
            if (!world.open.contains(joint.id()) && may) {
                StripPlan.Kind kind = random.nextInt(15) == 0 ? StripPlan.Kind.CUT : StripPlan.Kind.UNDO;
                free.add(new BuildRequest.Step(kind, joint.id(), List.of()));
            }
        }
        for (Ready ready : engine.ready()) {
            boolean gone = ready.joint().map(world.open::contains).orElse(false);
            boolean may = wild
                    || (world.free(ready) && world.heldBy(ready.effect().hold()));
            if (!world.ready.contains(ready.id()) && !gone && may) {
                free.add(new BuildRequest.Step(
                        StripPlan.Kind.valueOf(ready.kind().name()), ready.id(), List.of()));
            }
        }
        return free.isEmpty() ? List.of() : List.of(free.get(random.nextInt(free.size())));
    }

    private List<Set<String>> sets(BuildWorld world) {
        Map<Set<String>, Boolean> pieces = new LinkedHashMap<>();
        engine.parts().stream()
                .map(part -> world.piece(part.id()))
                .filter(piece -> !piece.contains("p0") && piece.stream().noneMatch(world.away::contains))
                .forEach(piece -> pieces.put(
                        new LinkedHashSet<>(piece.stream().sorted().toList()), true));
        List<Set<String>> sets = new ArrayList<>(pieces.keySet());
        for (Set<String> first : pieces.keySet()) {
            for (Set<String> second : pieces.keySet()) {
                if (first != second) {
                    Set<String> both = new LinkedHashSet<>(first);
                    both.addAll(second);
                    sets.add(both);
                }
            }
        }
        return sets;
    }

    private List<BuildRequest.Step> lift(BuildWorld world) {
        List<Set<String>> possible = sets(world).stream()
                .filter(set -> wild || world.canLift(set) && world.mass(set) <= 500)
                .toList();
        return possible.isEmpty() ? List.of() : List.of(step(possible.get(random.nextInt(possible.size()))));
    }

    private List<BuildRequest.Step> liftLoose(BuildWorld world, Set<String> tolerated) {
        Set<String> loose = world.loose();
        loose.removeAll(tolerated);
        return sets(world).stream()
                .filter(set -> loose.containsAll(set) && (wild || world.canLift(set)))
                .findFirst()
                .map(set -> List.of(step(set)))
                .orElse(List.of());
    }

    private static BuildRequest.Step step(Set<String> parts) {
        return new BuildRequest.Step(StripPlan.Kind.LIFT, "lift", List.copyOf(parts));
    }
}
