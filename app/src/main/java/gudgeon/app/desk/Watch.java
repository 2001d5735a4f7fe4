package gudgeon.app.desk;

import gudgeon.core.book.Facts;
import gudgeon.core.engine.CircuitKind;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Part;
import gudgeon.core.engine.Ready;
import gudgeon.core.planning.StripPlan;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What must be minded before a step, and what must hang on the key. */
public final class Watch {
    private Watch() {}

    /** A tag to hang on the key or the wheel. @param about circuit, joint or preparation */
    public record Tag(Sort sort, String about) {
        /** Sorts of tag. */
        public enum Sort {
            NO_OIL,
            NO_COOLANT,
            NO_FLUID,
            FUEL_OPEN,
            PINS_IN,
            TORQUE_HALF_DONE,
            /** A support carries something. */
            SUPPORTED,
            /** Something the file does not know is fitted. */
            AID_FITTED
        }
    }

    /**
     * Parts that must keep their position, orientation or mate, are not marked, and that nothing but gravity holds once
     * this step is done: mark or bag them first.
     */
    public static List<String> falling(Job job, StripPlan.Operation operation) {
        Engine engine = job.engine();
        Set<String> undone = new HashSet<>(job.facts().stripped().open());
        if (operation.kind() == StripPlan.Kind.UNDO || operation.kind() == StripPlan.Kind.CUT) {
            undone.add(operation.id());
        }
        Set<String> moving = operation.kind() == StripPlan.Kind.LIFT ? Set.copyOf(operation.pieces()) : Set.of();
        List<String> falling = new ArrayList<>();
        for (Part part : engine.parts()) {
            List<Joint> joints = engine.joints().stream()
                    .filter(joint -> joint.between().contains(part.id()))
                    .toList();
            boolean free = joints.stream().allMatch(joint -> undone.contains(joint.id()));
            boolean touched = joints.stream()
                    .anyMatch(joint -> joint.id().equals(operation.id())
                            || joint.between().stream().anyMatch(moving::contains));
            if (free
                    && touched
                    && isUnmarked(job.facts(), part)
                    && !(moving.size() == 1 && moving.contains(part.id()))) {
                falling.add(part.id());
            }
        }
        return falling;
    }

    private static boolean isUnmarked(Facts facts, Part part) {
        return !part.care().keep().isEmpty()
                && !facts.kept().marked().containsKey(part.id())
                && !facts.stripped().away().containsKey(part.id());
    }

    /** What must hang on the key now. */
    public static List<Tag> tags(Job job) {
        Engine engine = job.engine();
        Facts facts = job.facts();
        List<Tag> tags = new ArrayList<>();
        Set<String> filled = new HashSet<>();
        facts.built().steps().stream()
                .filter(step -> step.step().startsWith("fill/"))
                .forEach(step -> filled.add(step.step().substring("fill/".length())));
        engine.circuits().forEach(circuit -> {
            boolean drained =
                    circuit.drains().stream().anyMatch(facts.stripped().open()::contains)
                            || facts.ledger().fluids().containsKey(circuit.id());
            boolean opened = engine.joints().stream()
                    .filter(joint -> joint.freedom().opens().contains(circuit.id()))
                    .anyMatch(joint -> facts.stripped().open().contains(joint.id()));
            if (opened && fuel(circuit.kind())) {
                tags.add(new Tag(Tag.Sort.FUEL_OPEN, circuit.id()));
            } else if ((drained || opened) && !circuit.fluid().isBlank() && !filled.contains(circuit.id())) {
                tags.add(new Tag(dry(circuit.kind()), circuit.id()));
            }
        });
        for (String id : facts.stripped().open()) {
            engine.findReady(id).ifPresent(ready -> fitted(ready, tags));
        }
        facts.kept().aids().keySet().forEach(aid -> tags.add(new Tag(Tag.Sort.AID_FITTED, aid)));
        halfDone(job, tags);
        return tags;
    }

    private static boolean fuel(CircuitKind kind) {
        return kind == CircuitKind.FUEL || kind == CircuitKind.FUEL_HIGH_PRESSURE;
    }

    private static Tag.Sort dry(CircuitKind kind) {
        return switch (kind) {
            case OIL -> Tag.Sort.NO_OIL;
            case COOLANT -> Tag.Sort.NO_COOLANT;
            default -> Tag.Sort.NO_FLUID;
        };
    }

    private static void fitted(Ready ready, List<Tag> tags) {
        switch (ready.kind()) {
            case PIN -> tags.add(new Tag(Tag.Sort.PINS_IN, ready.id()));
            case SUPPORT, STRAP -> tags.add(new Tag(Tag.Sort.SUPPORTED, ready.id()));
            case RECORD, MAKE_SAFE, DRAIN, HOLDING_TOOL, CRACK_LOOSE -> {}
        }
    }

    private static void halfDone(Job job, List<Tag> tags) {
        Set<String> started = new HashSet<>();
        job.facts().built().steps().stream()
                .filter(step -> step.step().endsWith("/snug"))
                .forEach(
                        step -> started.add(step.step().substring(0, step.step().length() - "/snug".length())));
        if (started.isEmpty()) {
            return;
        }
        new BuildBench(job)
                .left().stream()
                        .filter(step -> step.tightening() != null)
                        .map(step -> step.subject().ref())
                        .filter(started::contains)
                        .distinct()
                        .forEach(joint -> tags.add(new Tag(Tag.Sort.TORQUE_HALF_DONE, joint)));
    }
}
