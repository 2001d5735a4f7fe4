package gudgeon.app.document;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Part;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Turns an engine, with or without a plan, into what is drawn: which boxes, which lines, in which state. Used once. */
final class DrawingScene {
    private static final double SMALL_KG = 2.5;
    private static final List<String> PIPE_WORDS =
            List.of("hose", "pipe", "loom", "cable", "line", "lead", "duct", "tube", "harness", "wire");

    private final Engine engine;
    private final PlanMarks marks;
    private final boolean everything;
    private final Map<String, Integer> depth = new HashMap<>();
    private final Map<String, Integer> order = new LinkedHashMap<>();
    private final Map<String, String> drawnAs = new HashMap<>();
    private final Map<String, Integer> jointsOf = new HashMap<>();

    DrawingScene(Engine engine, PlanMarks marks, boolean everything) {
        this.engine = engine;
        this.marks = marks;
        this.everything = everything || marks.hasNone();
    }

    DrawnEngine drawn() {
        for (Joint joint : engine.joints()) {
            joint.between().forEach(part -> jointsOf.merge(part, 1, Integer::sum));
        }
        measureDepth();
        orderByGroup();
        List<DrawnEngine.Box> boxes = boxes();
        Map<List<String>, List<Joint>> pairs = new LinkedHashMap<>();
        List<DrawnEngine.Line> lines = new ArrayList<>();
        for (Joint joint : engine.joints()) {
            List<String> ends = ends(joint);
            if (ends.size() == 2) {
                pairs.computeIfAbsent(ends, key -> new ArrayList<>()).add(joint);
            } else if (ends.size() > 2) {
                knot(joint, ends, boxes, lines);
            }
        }
        pairs.forEach((ends, joints) -> lines.add(line(ends.get(0), ends.get(1), joints)));
        return new DrawnEngine(boxes, lines);
    }

    /** Steps from the base over joints; parts that hang on nothing are far. */
    private void measureDepth() {
        Map<String, List<String>> near = new HashMap<>();
        for (Joint joint : engine.joints()) {
            for (String part : joint.between()) {
                near.computeIfAbsent(part, key -> new ArrayList<>()).addAll(joint.between());
            }
        }
        Deque<String> open = new ArrayDeque<>(List.of(engine.workplace().base()));
        depth.put(engine.workplace().base(), 0);
        while (!open.isEmpty()) {
            String part = open.remove();
            for (String other : near.getOrDefault(part, List.of())) {
                if (depth.putIfAbsent(other, depth.getOrDefault(part, 0) + 1) == null) {
                    open.add(other);
                }
            }
        }
    }

    private void orderByGroup() {
        Map<String, List<String>> groups = new LinkedHashMap<>();
        engine.parts()
                .forEach(part ->
                        groups.computeIfAbsent(part.group(), key -> new ArrayList<>()).add(part.id()));
        groups.values().forEach(ids -> ids.forEach(id -> order.put(id, order.size())));
    }

    private List<DrawnEngine.Box> boxes() {
        Set<String> concerned = concerned();
        Map<String, List<Part>> rest = new LinkedHashMap<>();
        List<DrawnEngine.Box> boxes = new ArrayList<>();
        for (String id : order.keySet()) {
            Part part = engine.part(id);
            if (everything || concerned.contains(id)) {
                drawnAs.put(id, id);
                boxes.add(box(part));
            } else {
                rest.computeIfAbsent(part.group(), key -> new ArrayList<>()).add(part);
            }
        }
        rest.forEach((group, parts) -> boxes.add(grouped(group, parts)));
        return boxes;
    }

    /** The base, the goal, everything that moves, and both ends of every joint undone. */
    private Set<String> concerned() {
        Set<String> parts = new HashSet<>(List.of(engine.workplace().base()));
        engine.parts().stream().map(Part::id).filter(marks::concerns).forEach(parts::add);
        engine.joints().stream()
                .filter(joint -> marks.undone(joint.id()))
                .forEach(joint -> parts.addAll(joint.between()));
        return parts;
    }

    private DrawnEngine.Box box(Part part) {
        DrawnEngine.State state = marks.state(part.id());
        boolean base = part.id().equals(engine.workplace().base());
        DrawnEngine.Shape shape =
                isPipe(part) && !base && state != DrawnEngine.State.TARGET && state != DrawnEngine.State.ASIDE
                        ? DrawnEngine.Shape.PIPE
                        : DrawnEngine.Shape.PART;
        String tag = marks.liftTag(part.id());
        String title = part.name() + (base ? ", stays put" : marks.hasNone() ? "" : ", " + state.words())
                + (tag.isEmpty() ? "" : ", step " + tag);
        return new DrawnEngine.Box(
                part.id(),
                shape,
                state,
                RowBreaker.rows(part.name(), shape),
                tag,
                base,
                order.getOrDefault(part.id(), 0),
                title);
    }

    private boolean isPipe(Part part) {
        String name = " " + part.name().toLowerCase(java.util.Locale.ROOT) + " ";
        return jointsOf.getOrDefault(part.id(), 0) <= 3
                && part.massKilograms() <= SMALL_KG
                && PIPE_WORDS.stream().anyMatch(word -> name.contains(" " + word + " ") || name.contains(" " + word + "s ")
                        || name.contains(" " + word + ","));
    }

    private DrawnEngine.Box grouped(String group, List<Part> parts) {
        String id = "group " + group;
        parts.forEach(part -> {
            drawnAs.put(part.id(), id);
            depth.merge(id, depth.getOrDefault(part.id(), 99), Math::min);
        });
        if (parts.size() == 1) {
            Part only = parts.getFirst();
            drawnAs.put(only.id(), only.id());
            return box(only);
        }
        order.put(id, order.getOrDefault(parts.getFirst().id(), 0));
        String name = group.isEmpty() ? "Other parts" : Names.capital(group.replace('-', ' '));
        List<String> rows = new ArrayList<>(RowBreaker.rows(name, DrawnEngine.Shape.PART));
        rows.add(Figures.count(parts.size(), "part") + ", stay");
        String names = Figures.list(parts.stream().map(part -> Names.inSentence(part.name())).toList());
        return new DrawnEngine.Box(
                id,
                DrawnEngine.Shape.PART,
                DrawnEngine.State.GROUPED,
                rows,
                "",
                false,
                order.getOrDefault(id, 0),
                name + ", stay in place: " + names);
    }

    /** Ids of the boxes that a joint joins, each once, the one farthest from the base first. */
    private List<String> ends(Joint joint) {
        Set<String> ends = new LinkedHashSet<>();
        joint.between().forEach(part -> ends.add(drawnAs.getOrDefault(part, part)));
        List<String> sorted = new ArrayList<>(ends);
        sorted.sort((a, b) -> {
            int byDepth = Integer.compare(depth.getOrDefault(b, 99), depth.getOrDefault(a, 99));
            return byDepth != 0 ? byDepth : Integer.compare(order.getOrDefault(b, 0), order.getOrDefault(a, 0));
        });
        return sorted;
    }

    private void knot(Joint joint, List<String> ends, List<DrawnEngine.Box> boxes, List<DrawnEngine.Line> lines) {
        boolean undone = marks.undone(joint.id());
        String id = "joint " + joint.id();
        String tag = marks.undoTag(joint.id());
        DrawnEngine.State state = undone ? DrawnEngine.State.OFF : DrawnEngine.State.IN_PLACE;
        String title = title(List.of(joint));
        boxes.add(new DrawnEngine.Box(
                id, DrawnEngine.Shape.KNOT, state, List.of(), tag, false, order.getOrDefault(ends.getFirst(), 0), title));
        for (String end : ends.subList(0, ends.size() - 1)) {
            lines.add(new DrawnEngine.Line(end, id, "", undone, joint.flexible(), 1, title));
        }
        lines.add(new DrawnEngine.Line(id, ends.getLast(), "", undone, joint.flexible(), 1, title));
    }

    private DrawnEngine.Line line(String from, String to, List<Joint> joints) {
        List<String> tags = joints.stream()
                .map(joint -> marks.undoTag(joint.id()))
                .filter(tag -> !tag.isEmpty())
                .toList();
        return new DrawnEngine.Line(
                from,
                to,
                PlanMarks.shortened(tags),
                joints.stream().allMatch(joint -> marks.undone(joint.id())),
                joints.stream().allMatch(Joint::flexible),
                joints.size(),
                title(joints));
    }

    private String title(List<Joint> joints) {
        return Figures.list(joints.stream()
                .map(joint -> {
                    String tag = marks.undoTag(joint.id());
                    return joint.name() + (tag.isEmpty() ? "" : ", undone in step " + tag);
                })
                .toList());
    }
}
