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
    /** Copies of a part (four injectors) are drawn as one box in engines with more parts than this. */
    private static final int SMALL_ENGINE = 40;

    private static final int FAR = 99;

    private final Engine engine;
    private final PlanMarks marks;
    private final boolean everything;
    private final DrawnParts parts;
    private final Map<String, Integer> depth = new HashMap<>();
    private final Map<String, Integer> order = new LinkedHashMap<>();
    private final Map<String, String> drawnAs = new HashMap<>();

    DrawingScene(Engine engine, PlanMarks marks, boolean everything) {
        this.engine = engine;
        this.marks = marks;
        this.everything = everything || marks.hasNone();
        this.parts = new DrawnParts(engine, marks);
    }

    /** Boxes, and the ties between them. */
    record Scene(List<DrawnEngine.Box> boxes, List<DrawnEngine.Tie> ties) {
        Scene {
            boxes = List.copyOf(boxes);
            ties = List.copyOf(ties);
        }
    }

    Scene scene() {
        measureDepth();
        orderByGroup();
        List<DrawnEngine.Box> boxes = boxes();
        Map<List<String>, List<Joint>> alike = new LinkedHashMap<>();
        for (Joint joint : engine.joints()) {
            List<String> ends = ends(joint);
            if (ends.size() > 1) {
                alike.computeIfAbsent(ends, key -> new ArrayList<>()).add(joint);
            }
        }
        List<DrawnEngine.Tie> ties = new ArrayList<>();
        alike.forEach((ends, joints) -> ties.add(tie(ends, joints)));
        return new Scene(boxes, ties);
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
                .forEach(part -> groups.computeIfAbsent(part.group(), key -> new ArrayList<>())
                        .add(part.id()));
        groups.values().forEach(ids -> ids.forEach(id -> order.put(id, order.size())));
    }

    private List<DrawnEngine.Box> boxes() {
        Set<String> concerned = concerned();
        Map<String, List<Part>> rest = new LinkedHashMap<>();
        Map<String, List<Part>> copies = new LinkedHashMap<>();
        for (String id : order.keySet()) {
            Part part = engine.part(id);
            if (everything || concerned.contains(id)) {
                copies.computeIfAbsent(copyKey(part), key -> new ArrayList<>()).add(part);
            } else {
                rest.computeIfAbsent(part.group(), key -> new ArrayList<>()).add(part);
            }
        }
        List<DrawnEngine.Box> boxes = new ArrayList<>();
        copies.values().forEach(same -> {
            draw(same, same.getFirst().id());
            boxes.add(parts.box(same, order(same.getFirst().id())));
        });
        rest.forEach((group, same) -> {
            String id = same.size() == 1 ? same.getFirst().id() : "group " + group;
            draw(same, id);
            order.putIfAbsent(id, order(same.getFirst().id()));
            boxes.add(same.size() == 1 ? parts.box(same, order(id)) : parts.group(id, group, same, order(id)));
        });
        return boxes;
    }

    private void draw(List<Part> same, String id) {
        for (Part part : same) {
            drawnAs.put(part.id(), id);
            depth.merge(id, depth.getOrDefault(part.id(), FAR), Math::min);
        }
    }

    private int order(String id) {
        return order.getOrDefault(id, 0);
    }

    /** Equal for copies of one part that share their fate; unique for all others. */
    private String copyKey(Part part) {
        if (engine.parts().size() <= SMALL_ENGINE
                || part.id().equals(engine.workplace().base())) {
            return part.id();
        }
        return part.id().replaceAll("[0-9]+", "#") + "|" + part.name().replaceAll("[0-9]+", "#") + "|" + part.group()
                + "|" + marks.state(part.id());
    }

    /** The base, the goal, everything that moves, and both ends of every joint undone. */
    private Set<String> concerned() {
        Set<String> ids = new HashSet<>(List.of(engine.workplace().base()));
        engine.parts().stream().map(Part::id).filter(marks::concerns).forEach(ids::add);
        engine.joints().stream()
                .filter(joint -> marks.undone(joint.id()))
                .forEach(joint -> ids.addAll(joint.between()));
        return ids;
    }

    /** Ids of the boxes that a joint joins, each once, the one farthest from the base first. */
    private List<String> ends(Joint joint) {
        Set<String> ends = new LinkedHashSet<>();
        joint.between().forEach(part -> ends.add(drawnAs.getOrDefault(part, part)));
        List<String> sorted = new ArrayList<>(ends);
        sorted.sort((a, b) -> {
            int byDepth = Integer.compare(depth.getOrDefault(b, FAR), depth.getOrDefault(a, FAR));
            return byDepth != 0 ? byDepth : Integer.compare(order(b), order(a));
        });
        return sorted;
    }

    private DrawnEngine.Tie tie(List<String> ends, List<Joint> joints) {
        return new DrawnEngine.Tie(
                ends,
                undoneIn(joints),
                joints.stream().allMatch(joint -> marks.undone(joint.id())),
                joints.stream().allMatch(Joint::flexible),
                title(joints));
    }

    private List<Integer> undoneIn(List<Joint> joints) {
        return joints.stream()
                .flatMap(joint -> marks.undoneIn(joint.id()).stream())
                .sorted()
                .toList();
    }

    private String title(List<Joint> joints) {
        return Figures.list(joints.stream()
                .map(joint -> joint.name()
                        + (marks.undone(joint.id())
                                ? ", undone in step "
                                        + marks.undoneIn(joint.id()).getFirst()
                                : ""))
                .toList());
    }
}
