package gudgeon.app.format;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Part;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** What hangs together in the untouched engine: by joints of any kind, and by rigid joints alone. */
final class Islands {
    private final Engine engine;
    private final Map<String, String> linked;
    private final Map<String, String> pieces;

    Islands(Engine engine) {
        this.engine = engine;
        this.linked = components(joint -> true);
        this.pieces = components(joint -> !joint.flexible());
    }

    private Map<String, String> components(Predicate<Joint> counts) {
        Map<String, String> parent = new HashMap<>();
        engine.parts().forEach(part -> parent.put(part.id(), part.id()));
        for (Joint joint : engine.joints()) {
            if (counts.test(joint) && !joint.between().isEmpty()) {
                String first = root(parent, joint.between().getFirst());
                joint.between().forEach(part -> parent.put(root(parent, part), first));
            }
        }
        return parent;
    }

    private static String root(Map<String, String> parent, String part) {
        String at = part;
        while (true) {
            String up = parent.getOrDefault(at, at);
            if (up.equals(at)) {
                return at;
            }
            parent.put(at, parent.getOrDefault(up, up));
            at = up;
        }
    }

    /** Groups of parts that no chain of joints links with the base, each in file order. */
    List<List<String>> apart() {
        String base = root(linked, engine.workplace().base());
        Map<String, List<String>> groups = new LinkedHashMap<>();
        for (Part part : engine.parts()) {
            String root = root(linked, part.id());
            if (!root.equals(base)) {
                groups.computeIfAbsent(root, key -> new ArrayList<>()).add(part.id());
            }
        }
        return List.copyOf(groups.values());
    }

    /** A name for the rigid piece that a part belongs to. */
    String pieceOf(String part) {
        return root(pieces, part);
    }

    Set<String> piecesOf(List<String> parts) {
        Set<String> found = new HashSet<>();
        parts.forEach(part -> found.add(pieceOf(part)));
        return found;
    }
}
