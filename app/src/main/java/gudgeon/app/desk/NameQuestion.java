package gudgeon.app.desk;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Part;
import java.util.List;
import java.util.stream.Stream;

/**
 * What in this engine is called something like that? Finds parts, by all their names, and joints.
 *
 * @param words as typed; every word must be found
 */
public record NameQuestion(Engine engine, String words) {
    /**
     * @param parts in file order
     * @param joints in file order
     * @param near names that may have been meant when nothing was found
     */
    public record Hits(List<Part> parts, List<Joint> joints, List<String> near) {
        public Hits {
            parts = List.copyOf(parts);
            joints = List.copyOf(joints);
            near = List.copyOf(near);
        }
    }

    /** What was found; nothing for words that are blank. */
    public Hits ask() {
        List<String> wanted = Stream.of(words.strip().split("\\s+", -1))
                .map(Nearest::plain)
                .filter(word -> !word.isEmpty())
                .toList();
        if (wanted.isEmpty()) {
            return new Hits(List.of(), List.of(), List.of());
        }
        List<Part> parts = engine.parts().stream()
                .filter(part -> holds(names(part), wanted))
                .toList();
        List<Joint> joints = engine.joints().stream()
                .filter(joint -> holds(List.of(joint.id(), joint.name()), wanted))
                .toList();
        return new Hits(parts, joints, parts.isEmpty() && joints.isEmpty() ? near() : List.of());
    }

    private List<String> near() {
        return new NameSearch(engine)
                .near(words.strip()).stream().map(UnknownName.Near::name).distinct().toList();
    }

    private static List<String> names(Part part) {
        return Stream.concat(Stream.of(part.id(), part.name()), part.care().otherNames().stream())
                .toList();
    }

    private static boolean holds(List<String> names, List<String> wanted) {
        return names.stream()
                .map(Nearest::plain)
                .anyMatch(name -> wanted.stream().allMatch(name::contains));
    }
}
