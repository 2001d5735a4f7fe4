package gudgeon.app.format;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * Every id of a file and where it stands, so that names can be resolved, near ones suggested, and later checks placed.
 * Parts, joints and ready operations share one space of ids, and checks keep out of it too, since marks of the build name
 * all of them.
 */
final class Names {
    private static final Pattern ID = Pattern.compile("[a-z][a-z0-9-]{0,59}");
    private static final int LONGEST_ID = 60;
    private static final int MOST_IDS = 20_000;

    /** What an id can name. */
    enum Kind {
        PART("part", true),
        JOINT("joint", true),
        READY("ready operation", true),
        CHECK("check", true),
        CIRCUIT("circuit", false),
        ZONE("zone", false),
        FEATURE("feature", false);

        private final String words;
        private final boolean shared;

        Kind(String words, boolean shared) {
            this.words = words;
            this.shared = shared;
        }

        String words() {
            return words;
        }
    }

    private final Problems problems;
    private final Map<Kind, Map<String, Optional<Mark>>> ids = new EnumMap<>(Kind.class);
    private final Map<String, Kind> shared = new HashMap<>();
    private final Map<String, Optional<Mark>> fields = new HashMap<>();
    private final Map<String, List<String>> globs = new HashMap<>();
    private final Set<String> derived = new LinkedHashSet<>();
    private final List<Named> cautions = new ArrayList<>();
    private int total;

    Names(Problems problems) {
        this.problems = problems;
        for (Kind kind : Kind.values()) {
            ids.put(kind, new LinkedHashMap<>());
        }
    }

    private Map<String, Optional<Mark>> of(Kind kind) {
        return java.util.Objects.requireNonNull(ids.get(kind));
    }

    /** Takes an id for a kind; false with a fault when it is badly formed or taken. */
    boolean claim(Kind kind, String id, Node key) {
        if (!ID.matcher(id).matches()) {
            problems.fault(
                    key,
                    Wording.shown(id) + " cannot be the id of a " + kind.words(),
                    "lower-case letters, digits and hyphens, starting with a letter, at most 60");
            return false;
        }
        Kind owner = kind.shared ? shared.get(id) : of(kind).containsKey(id) ? kind : null;
        if (owner != null) {
            int line = Problems.line(of(owner).getOrDefault(id, Optional.empty()));
            problems.fault(
                    key,
                    "the id " + id + " is taken by a " + owner.words() + (line > 0 ? " in line " + line : ""),
                    "parts, joints, ready operations and checks need ids of their own");
            return false;
        }
        if (++total > MOST_IDS) {
            problems.fault(key, "more than " + MOST_IDS + " ids", "an engine has some hundreds");
            return false;
        }
        of(kind).put(id, key.getStartMark());
        if (kind.shared) {
            shared.put(id, kind);
        }
        return true;
    }

    /** Takes the id of a drain's operation; the same drain may serve several circuits. */
    void derive(String id, Node at) {
        if (derived.add(id)) {
            claim(Kind.READY, id, at);
        }
    }

    boolean has(Kind kind, String id) {
        return of(kind).containsKey(id);
    }

    /** Remembers where a key of a thing stands, for checks that come later. */
    void place(Kind kind, String id, String field, Optional<Mark> at) {
        fields.put(kind + " " + id + " " + field, at);
    }

    /** Where a key of a thing stands; where its id stands when the key is not there. */
    Optional<Mark> at(Kind kind, String id, String field) {
        Optional<Mark> mark = fields.get(kind + " " + id + " " + field);
        return mark != null ? mark : at(kind, id);
    }

    /** Remembers that a caution of the catalogue is named, and where. */
    void caution(String id, Optional<Mark> at) {
        cautions.add(new Named(id, at));
    }

    List<Named> cautions() {
        return List.copyOf(cautions);
    }

    /** A name and where it stands. */
    record Named(String id, Optional<Mark> at) {}

    Optional<Mark> at(Kind kind, String id) {
        return of(kind).getOrDefault(id, Optional.empty());
    }

    /** The ids that a node names, of the given kinds: one, or for {@code injector-*} all copies. None, and a fault, when unknown. */
    List<String> resolve(Node node, Kind first, Kind... more) {
        EnumSet<Kind> kinds = EnumSet.of(first, more);
        String name = Fields.textOf(node, problems).orElse("");
        if (name.isEmpty()) {
            return List.of();
        }
        List<String> found = name.contains("*") ? glob(name, kinds) : exact(name, kinds);
        if (found.isEmpty()) {
            unknown(node, name, kinds);
        }
        return found;
    }

    /** The one id that a node names. */
    Optional<String> resolveOne(Node node, Kind first, Kind... more) {
        List<String> found = resolve(node, first, more);
        if (found.size() > 1) {
            problems.fault(
                    node, Wording.shown(Fields.textOf(node, problems).orElse("")) + " means several", "name one");
            return Optional.empty();
        }
        return found.stream().findFirst();
    }

    /** The ids that the members of a list name, repeats taken once with a warning. */
    List<String> resolveAll(List<Node> nodes, Kind first, Kind... more) {
        Set<String> all = new LinkedHashSet<>();
        for (Node node : nodes) {
            for (String id : resolve(node, first, more)) {
                if (!all.add(id)) {
                    problems.warning(node.getStartMark(), id + " is named twice in this list", "once is enough");
                }
            }
        }
        return List.copyOf(all);
    }

    private List<String> exact(String name, Set<Kind> kinds) {
        return kinds.stream().anyMatch(kind -> has(kind, name)) ? List.of(name) : List.of();
    }

    private List<String> glob(String name, Set<Kind> kinds) {
        if (name.length() > LONGEST_ID || name.indexOf('*') != name.lastIndexOf('*')) {
            return List.of();
        }
        return globs.computeIfAbsent(kinds + " " + name, key -> {
            String regex = Pattern.quote(name).replace("*", "\\E\\d+\\Q");
            Pattern pattern = Pattern.compile(regex);
            List<String> found = new ArrayList<>();
            for (Kind kind : kinds) {
                of(kind).keySet().stream()
                        .filter(id -> pattern.matcher(id).matches())
                        .forEach(found::add);
            }
            return List.copyOf(found);
        });
    }

    private void unknown(Node node, String name, Set<Kind> kinds) {
        String wanted = String.join(" or ", kinds.stream().map(Kind::words).toList());
        for (Kind other : Kind.values()) {
            if (!kinds.contains(other) && has(other, name)) {
                String advice = other == Kind.JOINT && kinds.contains(Kind.PART)
                        ? "in a condition write { joint: " + name + " }"
                        : "name a " + wanted;
                problems.fault(node, name + " is a " + other.words() + ", not a " + wanted, advice);
                return;
            }
        }
        List<String> known = new ArrayList<>();
        kinds.forEach(kind -> known.addAll(of(kind).keySet()));
        problems.fault(
                node,
                "no " + wanted + " is called " + Wording.shown(name),
                Wording.maybe(name, known, "add it, or correct the name"));
    }
}
