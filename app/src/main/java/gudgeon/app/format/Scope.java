package gudgeon.app.format;

import gudgeon.core.engine.Joint;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * What every reader of a section needs.
 *
 * @param problems where faults go
 * @param names all ids of the file
 * @param startZone id of the start zone
 */
record Scope(Problems problems, Names names, String startZone) {
    private static final double DAY = 24 * 3600.0;
    static final Quantities.Range WORK_TIME = new Quantities.Range(0, DAY, "at most 24 h for one operation");
    static final Quantities.Range LONG_TIME = new Quantities.Range(0, 14 * DAY, "at most 336 h");
    static final Quantities.Range HEIGHT = new Quantities.Range(-5000, 5000, "within 5 m of the file's zero");
    static final Quantities.Range SHARE = new Quantities.Range(0, 100, "between 0 % and 100 %");

    Fields fields(Node node, String owner) {
        return Fields.of(node, owner, problems);
    }

    /** The zone of a thing; the fallback when it names none. */
    String zone(Fields fields, String fallback) {
        return fields.take("zone")
                .flatMap(node -> names.resolveOne(node, Names.Kind.ZONE))
                .orElse(fallback);
    }

    List<String> ready(Fields fields, String key) {
        return names.resolveAll(fields.list(key), Names.Kind.READY);
    }

    List<String> joints(Fields fields, String key) {
        return names.resolveAll(fields.list(key), Names.Kind.JOINT);
    }

    List<String> parts(Fields fields, String key) {
        return names.resolveAll(fields.list(key), Names.Kind.PART);
    }

    Joint.EngineState engineState(Fields fields) {
        return switch (fields.word("engine", "", List.of("cold", "warm"))) {
            case "cold" -> Joint.EngineState.COLD;
            case "warm" -> Joint.EngineState.WARM;
            default -> Joint.EngineState.ANY;
        };
    }

    /** Cautions of a thing; each is remembered with its place for the check against the catalogue. */
    List<String> cautions(Fields fields, String key) {
        List<Node> nodes = fields.list(key);
        for (Node node : nodes) {
            Fields.textOf(node, problems).ifPresent(id -> names.caution(id, node.getStartMark()));
        }
        return nodes.stream()
                .map(node -> Fields.textOf(node, problems))
                .flatMap(Optional::stream)
                .toList();
    }

    /** "the joint head-bolts", for problems. */
    static String called(Names.Kind kind, String id) {
        return "the " + kind.words() + " " + id;
    }

    /**
     * The default name of a joint. An id that is the first part and then another one, or its last words, names an end of a
     * hose or pipe: {@code fuel-line-carburettor} is "Fuel line at the carburettor", {@code injector-pipe-rail-2} is
     * "Injector pipe 2 at the rail". Any other is its id with blanks.
     *
     * @param between ids of its parts
     */
    static String nameOf(String id, List<String> between) {
        if (between.isEmpty()) {
            return nameOf(id);
        }
        String first = unnumbered(between.getFirst());
        String start = first + "-";
        String rest = unnumbered(id).startsWith(start) ? unnumbered(id).substring(start.length()) : "";
        String own = between.getFirst().substring(first.length());
        return between.stream()
                .skip(1)
                .filter(part -> !rest.isEmpty() && ("-" + unnumbered(part)).endsWith("-" + rest))
                .findFirst()
                .map(part -> nameOf(between.getFirst()) + " at " + other(part, own))
                .orElse(nameOf(id));
    }

    /** The other end; a number that is the first one's too is not said again. */
    private static String other(String part, String own) {
        String number = part.substring(unnumbered(part).length());
        boolean numbered = !number.isEmpty() && !number.equals(own);
        return (numbered ? part : "the " + unnumbered(part)).replace('-', ' ');
    }

    private static String unnumbered(String id) {
        return id.replaceFirst("-[0-9]+$", "");
    }

    /** The default name of a thing: its id with blanks, capital first. */
    static String nameOf(String id) {
        String words = id.replace('-', ' ');
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
