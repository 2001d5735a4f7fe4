package gudgeon.core.book;

import gudgeon.core.book.Facts.Contradiction;
import gudgeon.core.book.Facts.Contradiction.Sort;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** The part of the fold that puts the engine together again. */
final class BuildFold {
    private static final String SNUG = "/snug";
    private static final String BACK = "/back";

    private final List<Contradiction> contradictions;
    private final StripFold strip;
    /** By their number in the book. */
    private final Map<Integer, Build.StepBuilt> steps = new LinkedHashMap<>();
    /** By what stands before the stroke of their id, the numbers of steps. */
    private final Map<String, List<Integer>> stepsOf = new HashMap<>();

    private int nextStep;
    private final Map<String, Map<Integer, Facts.Stage>> stages = new LinkedHashMap<>();
    private final Map<String, Integer> again = new HashMap<>();
    /** By joint, which entry turned which fastener in which stage. */
    private final Map<String, Map<String, UUID>> turnedBy = new HashMap<>();
    /** By joint, when somebody was last at its tightening. */
    private final Map<String, OffsetDateTime> touched = new LinkedHashMap<>();
    /** Joints at which nobody was since a session began or ended. */
    private final Set<String> leftSince = new LinkedHashSet<>();
    private final Set<String> signed = new LinkedHashSet<>();
    private final List<Build.TurningForce> forces = new ArrayList<>();

    BuildFold(List<Contradiction> contradictions, StripFold strip) {
        this.contradictions = contradictions;
        this.strip = strip;
    }

    Facts.Built built() {
        Map<String, Facts.Tightened> joints = new LinkedHashMap<>();
        Set<String> all = new LinkedHashSet<>(stages.keySet());
        all.addAll(touched.keySet());
        for (String joint : all) {
            joints.put(
                    joint,
                    new Facts.Tightened(
                            stages.getOrDefault(joint, Map.of()),
                            again.getOrDefault(joint, 0),
                            Optional.ofNullable(touched.get(joint)),
                            leftSince.contains(joint)));
        }
        // what was undone again after it had been built is not built
        List<Build.StepBuilt> standing =
                steps.values().stream().filter(step -> !reopened(step.step())).toList();
        return new Facts.Built(standing, joints, List.copyOf(signed), forces);
    }

    private boolean reopened(String step) {
        int slash = step.indexOf('/');
        return slash > 0
                && !step.startsWith("fill/")
                && !step.startsWith("bleed/")
                && !step.startsWith("check/")
                && !step.endsWith("/seal")
                && strip.isOpen(step.substring(0, slash));
    }

    void add(Entry entry, Build build) {
        switch (build) {
            case Build.StepBuilt step -> step(entry, step);
            case Build.StageReached reached -> {
                touch(entry, reached.joint());
                reached(reached);
            }
            case Build.AngleTurned turned -> {
                touch(entry, turned.joint());
                turned(entry, turned);
            }
            case Build.Interrupted broken -> {
                touch(entry, broken.joint());
                broken(broken);
            }
            case Build.StartedAgain started -> {
                stages.put(started.joint(), new LinkedHashMap<>());
                stepsOf.getOrDefault(started.joint(), List.of()).forEach(steps::remove);
                stepsOf.remove(started.joint());
                strip.reopen(entry, started.joint());
                turnedBy.remove(started.joint());
                touched.remove(started.joint());
                again.merge(started.joint(), 1, Integer::sum);
            }
            case Build.TurningForce force -> forces.add(force);
            case Build.CheckSigned check -> signed.add(check.check());
            case Build.LicensedDone licensed -> {}
        }
    }

    private void touch(Entry entry, String joint) {
        touched.put(joint, entry.stamp().at());
        leftSince.remove(joint);
    }

    /** A session begins or ends: whoever was at a joint has left it. */
    void left() {
        leftSince.addAll(touched.keySet());
    }

    private void step(Entry entry, Build.StepBuilt step) {
        steps.put(nextStep, step);
        int slash = step.step().indexOf('/');
        if (slash > 0) {
            if (!step.step().matches("(fill|bleed|check)/.*")) {
                touch(entry, step.step().substring(0, slash));
            }
            stepsOf.computeIfAbsent(step.step().substring(0, slash), joint -> new ArrayList<>())
                    .add(nextStep);
        }
        nextStep++;
        strip.placed(step.parts());
        if (step.step().endsWith(SNUG)) {
            strip.close(entry, step.step().substring(0, step.step().length() - SNUG.length()));
        } else if (step.step().endsWith(BACK)) {
            strip.close(entry, step.step().substring(0, step.step().length() - BACK.length()));
        }
    }

    private Facts.Stage stage(String joint, int number) {
        return stages.computeIfAbsent(joint, id -> new LinkedHashMap<>()).getOrDefault(number, Facts.Stage.UNTOUCHED);
    }

    private void put(String joint, int number, Facts.Stage stage) {
        stages.computeIfAbsent(joint, id -> new LinkedHashMap<>()).put(number, stage);
    }

    private void reached(Build.StageReached reached) {
        Facts.Stage stage = stage(reached.joint(), reached.stage());
        put(
                reached.joint(),
                reached.stage(),
                new Facts.Stage(united(stage.reached(), reached.fasteners()), stage.turned(), false, true));
    }

    private void turned(Entry entry, Build.AngleTurned turned) {
        Facts.Stage stage = stage(turned.joint(), turned.stage());
        Map<String, UUID> by = turnedBy.computeIfAbsent(turned.joint(), joint -> new HashMap<>());
        for (String fastener : turned.fasteners()) {
            UUID before = by.putIfAbsent(turned.stage() + "|" + fastener, entry.id());
            if (before != null) {
                contradictions.add(new Contradiction(Sort.TURNED_TWICE, entry.id(), List.of(before), fastener));
            }
        }
        put(
                turned.joint(),
                turned.stage(),
                new Facts.Stage(stage.reached(), united(stage.turned(), turned.fasteners()), false, stage.certain()));
    }

    /** A torque stage begins again at its first fastener; an angle stays where it is. */
    private void broken(Build.Interrupted broken) {
        Facts.Stage stage = stage(broken.joint(), broken.stage());
        put(
                broken.joint(),
                broken.stage(),
                new Facts.Stage(List.of(), stage.turned(), true, broken.certain() && stage.certain()));
    }

    private static List<String> united(List<String> first, List<String> second) {
        Set<String> all = new LinkedHashSet<>(first);
        all.addAll(second);
        return List.copyOf(all);
    }
}
