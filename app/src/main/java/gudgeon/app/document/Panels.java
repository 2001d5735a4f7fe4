package gudgeon.app.document;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Divides a large drawing into panels, one for each assembly: joints inside an assembly are lines, joints to another one are
 * named at the part. Lines from everywhere to everywhere would hide the engine. Parts of a panel with the same neighbours
 * become rows of a list.
 */
final class Panels {
    private static final double REFERENCE_WIDTH = 150;
    private static final double ENTRY_WIDTH = 190;
    private static final int MOST_ROWS = 12;

    private final Map<String, DrawnEngine.Box> boxes = new LinkedHashMap<>();
    private final Map<String, List<DrawnEngine.Reference>> references = new HashMap<>();
    private final Map<String, List<DrawnEngine.Tie>> inside = new LinkedHashMap<>();

    /** One assembly. */
    record Panel(String heading, DrawnEngine drawn) {}

    private Panels(DrawingScene.Scene scene, boolean lines) {
        scene.boxes().forEach(box -> boxes.put(box.id(), box));
        scene.ties().forEach(tie -> sort(tie, lines));
    }

    /**
     * Panels in the order of the engine file; the base is in none of them.
     *
     * @param lines whether joints inside an assembly are lines; otherwise every joint is named, which needs the least width
     */
    static List<Panel> of(DrawingScene.Scene scene, boolean lines) {
        return new Panels(scene, lines).panels();
    }

    private List<Panel> panels() {
        Map<String, List<DrawnEngine.Box>> groups = new LinkedHashMap<>();
        for (DrawnEngine.Box box : boxes.values()) {
            if (!box.base()) {
                groups.computeIfAbsent(box.seat().group(), key -> new ArrayList<>())
                        .add(box.with(references.getOrDefault(box.id(), List.of())));
            }
        }
        List<Panel> panels = new ArrayList<>();
        groups.forEach((group, members) -> {
            String heading = Names.heading(
                    group, members.stream().map(box -> box.label().name()).toList());
            DrawnEngine drawn = DrawnEngine.of(members, inside.getOrDefault(group, List.of()));
            panels.add(new Panel(heading, withLists(drawn)));
        });
        return panels;
    }

    private void sort(DrawnEngine.Tie tie, boolean lines) {
        Set<String> groups = new LinkedHashSet<>();
        boolean base = false;
        for (String end : tie.ends()) {
            DrawnEngine.Box box = boxes.get(end);
            groups.add(box == null ? "" : box.seat().group());
            base |= box != null && box.base();
        }
        if (lines && groups.size() == 1 && !base) {
            inside.computeIfAbsent(groups.iterator().next(), key -> new ArrayList<>())
                    .add(tie);
            return;
        }
        List<String> others = tie.ends().subList(1, tie.ends().size()).stream()
                .map(this::name)
                .toList();
        references
                .computeIfAbsent(tie.ends().getFirst(), key -> new ArrayList<>())
                .add(new DrawnEngine.Reference(Figures.list(others, 2), tie.tag(), tie.undone()));
    }

    private String name(String id) {
        DrawnEngine.Box box = boxes.get(id);
        return box == null
                ? id
                : Names.inSentence(
                        box.state() == DrawnEngine.State.GROUPED
                                ? box.label().rows().getFirst()
                                : box.label().name());
    }

    private static DrawnEngine withLists(DrawnEngine drawn) {
        Map<String, Set<String>> neighbours = new HashMap<>();
        for (DrawnEngine.Line line : drawn.lines()) {
            neighbours.computeIfAbsent(line.from(), key -> new TreeSet<>()).add(line.to());
            neighbours.computeIfAbsent(line.to(), key -> new TreeSet<>()).add(line.from());
        }
        Map<Set<String>, List<DrawnEngine.Box>> alike = new LinkedHashMap<>();
        for (DrawnEngine.Box box : drawn.boxes()) {
            Set<String> near = neighbours.getOrDefault(box.id(), Set.of());
            boolean row = box.shape() != DrawnEngine.Shape.KNOT
                    && box.state() != DrawnEngine.State.TARGET
                    && box.state() != DrawnEngine.State.GROUPED;
            if (row && near.size() <= 1) {
                alike.computeIfAbsent(near, key -> new ArrayList<>()).add(box);
            }
        }
        DrawnEngine result = drawn;
        Set<String> taken = new LinkedHashSet<>();
        for (Map.Entry<Set<String>, List<DrawnEngine.Box>> same : alike.entrySet()) {
            List<DrawnEngine.Box> rows = same.getValue();
            if (same.getKey().stream().anyMatch(taken::contains)) {
                continue;
            }
            for (int from = 0; from < rows.size(); from += MOST_ROWS) {
                List<DrawnEngine.Box> some = rows.subList(from, Math.min(rows.size(), from + MOST_ROWS));
                if (some.size() > 1) {
                    result = listed(result, same.getKey(), some);
                    some.forEach(box -> taken.add(box.id()));
                }
            }
        }
        return result;
    }

    private static DrawnEngine listed(DrawnEngine drawn, Set<String> near, List<DrawnEngine.Box> rows) {
        Set<String> ids = new LinkedHashSet<>();
        rows.forEach(box -> ids.add(box.id()));
        DrawnEngine.Box first = rows.getFirst();
        String id = "list " + first.id();
        List<DrawnEngine.Line> replaced = new ArrayList<>();
        List<DrawnEngine.Line> lines = new ArrayList<>();
        for (DrawnEngine.Line line : drawn.lines()) {
            (ids.contains(line.from()) || ids.contains(line.to()) ? replaced : lines).add(line);
        }
        near.forEach(other -> lines.add(joined(id, other, replaced)));
        List<DrawnEngine.Box> boxes = new ArrayList<>(drawn.boxes());
        boxes.removeIf(box -> ids.contains(box.id()));
        String title =
                Figures.list(rows.stream().map(box -> box.label().title()).toList());
        boxes.add(new DrawnEngine.Box(
                id,
                DrawnEngine.Shape.LIST,
                DrawnEngine.State.IN_PLACE,
                new DrawnEngine.Label(List.of(), "", title),
                first.seat(),
                List.of(),
                rows.stream().map(box -> entry(box, replaced)).toList()));
        return new DrawnEngine(boxes, lines);
    }

    private static DrawnEngine.Line joined(String list, String other, List<DrawnEngine.Line> replaced) {
        boolean listAbove = replaced.isEmpty() || replaced.getFirst().to().equals(other);
        return new DrawnEngine.Line(
                listAbove ? list : other,
                listAbove ? other : list,
                "",
                replaced.stream().allMatch(DrawnEngine.Line::undone),
                replaced.stream().allMatch(DrawnEngine.Line::flexible),
                Figures.list(replaced.stream().map(DrawnEngine.Line::title).toList()));
    }

    private static DrawnEngine.Entry entry(DrawnEngine.Box box, List<DrawnEngine.Line> lines) {
        List<String> tags = new ArrayList<>();
        for (DrawnEngine.Line line : lines) {
            if ((line.from().equals(box.id()) || line.to().equals(box.id()))
                    && !line.tag().isEmpty()) {
                tags.add(line.tag());
            }
        }
        box.references().stream()
                .map(DrawnEngine.Reference::tag)
                .filter(tag -> !tag.isEmpty())
                .forEach(tags::add);
        String to = Figures.list(
                box.references().stream().map(DrawnEngine.Reference::to).toList());
        return new DrawnEngine.Entry(
                RowBreaker.rows(box.label().name(), Typeface.SHEET_500, RowBreaker.PIPE_SIZE, ENTRY_WIDTH),
                to.isEmpty()
                        ? List.of()
                        : RowBreaker.rows("to " + to, Typeface.SHEET_500, RowBreaker.SMALL, ENTRY_WIDTH),
                box.shape(),
                box.state(),
                PlanMarks.joined(tags),
                box.label().tag());
    }

    /** Width that the text of a reference may take. */
    static double referenceWidth() {
        return REFERENCE_WIDTH;
    }
}
