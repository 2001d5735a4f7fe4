package gudgeon.app.document;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Part;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Boxes for parts, for copies of one part, and for groups of parts that stay. */
final class DrawnParts {
    private static final double PIPE_MOST_KG = 2.5;
    private static final int PIPE_MOST_JOINTS = 3;
    private static final List<String> PIPE_WORDS =
            List.of("hose", "pipe", "loom", "cable", "line", "lead", "duct", "tube", "harness", "wire");

    private final Engine engine;
    private final PlanMarks marks;
    private final Map<String, Integer> jointsOf = new HashMap<>();

    DrawnParts(Engine engine, PlanMarks marks) {
        this.engine = engine;
        this.marks = marks;
        engine.joints().forEach(joint -> joint.between().forEach(part -> jointsOf.merge(part, 1, Integer::sum)));
    }

    /** One box for a part, or for copies of it in the same state. */
    DrawnEngine.Box box(List<Part> copies, int order) {
        Part part = copies.getFirst();
        DrawnEngine.State state = marks.state(part.id());
        boolean base = part.id().equals(engine.workplace().base());
        boolean pipe = isPipe(part) && !base && state != DrawnEngine.State.TARGET && state != DrawnEngine.State.ASIDE;
        DrawnEngine.Shape shape = pipe ? DrawnEngine.Shape.PIPE : DrawnEngine.Shape.PART;
        String tag = PlanMarks.shortened(copies.stream()
                .flatMap(copy -> marks.liftedIn(copy.id()).stream())
                .toList());
        String name = name(copies);
        String fate = base ? ", stays put" : marks.hasNone() ? "" : ", " + state.words();
        String title = name + fate + (tag.isEmpty() ? "" : ", step " + tag);
        return DrawnEngine.Box.plain(
                part.id(),
                shape,
                state,
                new DrawnEngine.Label(RowBreaker.rows(name, shape), tag, title),
                new DrawnEngine.Seat(order, part.group(), base));
    }

    /** One box for several parts that stay. */
    DrawnEngine.Box group(String id, String group, List<Part> parts, int order) {
        String name = Names.heading(group, parts.stream().map(Part::name).toList());
        List<String> rows = new ArrayList<>(RowBreaker.rows(name, DrawnEngine.Shape.PART));
        rows.add(Figures.count(parts.size(), "part") + " stay");
        String names = Figures.list(
                parts.stream().map(part -> Names.inSentence(part.name())).toList());
        return DrawnEngine.Box.plain(
                id,
                DrawnEngine.Shape.PART,
                DrawnEngine.State.GROUPED,
                new DrawnEngine.Label(rows, "", name + ", stay in place: " + names),
                new DrawnEngine.Seat(order, group, false));
    }

    /** "Injector 1 to 4" for copies. */
    private static String name(List<Part> copies) {
        String first = copies.getFirst().name();
        if (copies.size() == 1) {
            return first;
        }
        String last = copies.getLast().name();
        if (!first.replaceFirst("\\d+", "").equals(last.replaceFirst("\\d+", ""))) {
            return Figures.list(copies.stream()
                    .map(copy -> copy == copies.getFirst() ? copy.name() : own(first, copy.name()))
                    .toList());
        }
        String from = first.replaceAll("^\\D*(\\d+).*$", "$1");
        String to = last.replaceAll("^\\D*(\\d+).*$", "$1");
        return from.equals(to)
                ? first + " (" + copies.size() + ")"
                : first.replaceFirst("\\d+", from + (copies.size() == 2 ? " and " : " to ") + to);
    }

    /** What a name has that another one before it has not: "3 and 4" of "clamp of cylinders 3 and 4". */
    private static String own(String before, String name) {
        int same = 0;
        while (same < name.length() && same < before.length() && name.charAt(same) == before.charAt(same)) {
            same++;
        }
        return name.substring(same);
    }

    private boolean isPipe(Part part) {
        int joints = jointsOf.getOrDefault(part.id(), 0);
        return joints <= PIPE_MOST_JOINTS && part.massKilograms() <= PIPE_MOST_KG && says(part.name(), PIPE_WORDS);
    }

    private static boolean says(String name, List<String> words) {
        String spaced = " " + name.toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", " ") + " ";
        return words.stream().anyMatch(word -> spaced.contains(" " + word + " ") || spaced.contains(" " + word + "s "));
    }
}
