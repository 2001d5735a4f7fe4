package gudgeon.app.document;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Part;
import gudgeon.core.engine.Ready;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names of an engine's things as they stand inside a sentence. */
public final class Names {
    private static final Pattern NUMBERED = Pattern.compile("([^0-9]*\\p{L})( [0-9]+ (?:to|and) [0-9]+)([^0-9]*)");

    private final Engine engine;
    private final Map<String, String> spellings = new LinkedHashMap<>();

    public Names(Engine engine) {
        this.engine = engine;
    }

    /** A part's name, in lower case where it is an ordinary word; the id when there is no such part. */
    public String part(String id) {
        return engine.findPart(id).map(part -> inSentence(part.name())).orElse(id);
    }

    /** The names of parts, in order. */
    public List<String> parts(List<String> ids) {
        return ids.stream().map(this::part).toList();
    }

    /** "thermostat housing to cylinder head", "cylinder head to barrel and crankcase". */
    public String between(Joint joint) {
        List<String> names = gathered(parts(joint.between()));
        String first = names.getFirst();
        return names.size() == 1 ? first : first + " to " + Figures.list(names.subList(1, names.size()));
    }

    /** A part's name with its article: "the cylinder head", "injector 1". */
    String the(String id) {
        return withArticle(part(id));
    }

    /** All parts of a joint but the first, with their articles. */
    String theOthers(Joint joint) {
        return Figures.list(gathered(
                        parts(joint.between().subList(1, joint.between().size())))
                .stream()
                .map(Names::withArticle)
                .toList());
    }

    /** "the rail"; a name that ends in its own number has no article: "injectors 1 to 4". */
    public static String withArticle(String name) {
        return name.matches("[^0-9]*[a-z] [0-9]+( (to|and) [0-9]+)?( (at|with) .*| \\(.*\\))?") && !name.contains(" of ") ? name : "the " + name;
    }

    /** What is done to make ready, an instruction: "Drain: coolant, at the radiator tap". */
    String ready(Ready ready) {
        String joint = ready.joint()
                .flatMap(engine::findJoint)
                .map(found -> inSentence(spelled(found.name())))
                .orElse("");
        return switch (ready.kind()) {
            case CRACK_LOOSE -> joint.isEmpty() ? capital(ready.name()) : "Crack loose: " + joint;
            case DRAIN ->
                joint.isEmpty() ? capital(ready.name()) : "Drain: " + drained(ready.id()) + ", at the " + joint;
            case RECORD, MAKE_SAFE, SUPPORT, STRAP, PIN, HOLDING_TOOL -> capital(ready.name());
        };
    }

    private String drained(String drain) {
        return Figures.list(engine.circuits().stream()
                .filter(circuit -> circuit.drains().contains(drain))
                .map(circuit -> inSentence(circuit.name()))
                .toList());
    }

    /**
     * A name that was made from an id, in the spelling of the parts' names: "egr cooler flange" becomes "EGR cooler flange",
     * "leak off injectors" becomes "leak-off injectors". Words are joined only before a noun: "timing belt" stays.
     */
    String spelled(String name) {
        if (spellings.isEmpty()) {
            for (Part part : engine.parts()) {
                for (String word : part.name().split("[^\\p{L}-]+", -1)) {
                    boolean abbreviation = word.matches("\\p{Lu}{2,}");
                    boolean joined = word.matches("\\p{L}+(-\\p{L}+)+");
                    if (abbreviation || joined) {
                        spellings.putIfAbsent(
                                word.toLowerCase(Locale.ROOT).replace('-', ' '),
                                abbreviation ? word : inSentence(word));
                    }
                }
            }
        }
        String result = name;
        for (Map.Entry<String, String> spelling : spellings.entrySet()) {
            String end = spelling.getValue().contains("-") ? "(?= \\p{L})" : "(?![\\p{L}-])";
            result = result.replaceAll(
                    "(?iu)(?<![\\p{L}-])" + Pattern.quote(spelling.getKey()) + end, spelling.getValue());
        }
        return result;
    }

    /** Names that follow each other and differ only in their number become one: "injectors 1 to 4". */
    public static List<String> gathered(List<String> names) {
        List<String> all = new ArrayList<>();
        int from = 0;
        while (from < names.size()) {
            int to = from + 1;
            while (to < names.size() && sameButNumber(names.get(from), names.get(to))) {
                to++;
            }
            String last = number(names.get(to - 1));
            String joined = to - from == 2 ? " and " : " to ";
            String first = to - from == 1 ? names.get(from) : unexplained(names.get(from));
            all.add(to - from == 1 ? first : plural(first.replaceFirst("[0-9]+", number(first) + joined + last)));
            from = to;
        }
        return List.copyOf(all);
    }

    /** The plural of "injector 1 to 4" or "injector clamp 1 and 2 bolt". */
    private static String plural(String name) {
        Matcher numbered = NUMBERED.matcher(name);
        if (!numbered.matches()) {
            return name;
        }
        String rest = numbered.group(3);
        return rest.isBlank() || rest.startsWith(" at ") || rest.startsWith(" of ") || rest.startsWith(" with ")
                ? Figures.plural(numbered.group(1)) + numbered.group(2) + rest
                : numbered.group(1) + numbered.group(2) + Figures.plural(rest);
    }

    private static boolean sameButNumber(String a, String b) {
        return !number(a).isEmpty()
                && !a.equals(b)
                && unexplained(a).replaceFirst("[0-9]+", "#").equals(unexplained(b).replaceFirst("[0-9]+", "#"));
    }

    /** Without what stands in brackets behind it: "push rod 1 (inlet)". */
    private static String unexplained(String name) {
        return name.replaceFirst(" \\([^()]*\\)$", "");
    }

    private static String number(String name) {
        return name.replaceAll("^[^0-9]*([0-9]*).*$", "$1");
    }

    /** The name of a joint, ready operation, part or circuit of this id, in lower case; the id when there is none. */
    public String any(String id) {
        return engine.findJoint(id)
                .map(joint -> spelled(joint.name()))
                .or(() -> engine.findReady(id).map(this::ready))
                .or(() -> engine.findPart(id).map(Part::name))
                .or(() -> engine.circuits().stream()
                        .filter(circuit -> circuit.id().equals(id))
                        .map(circuit -> circuit.name())
                        .findFirst())
                .or(() -> engine.findFeature(id).map(feature -> feature.name()))
                .map(Names::inSentence)
                .orElse(id);
    }

    /** A zone's name as written. */
    public String zone(String id) {
        return engine.workplace().zones().stream()
                .filter(zone -> zone.id().equals(id))
                .map(zone -> zone.name().isBlank() ? capital(id.replace('-', ' ')) : zone.name())
                .findFirst()
                .orElse(id);
    }

    /** Lower case at the start, unless the word is an abbreviation ("EGR cooler"). */
    public static String inSentence(String name) {
        if (name.length() > 1 && !Character.isLowerCase(name.charAt(1)) && name.charAt(1) != ' ') {
            return name;
        }
        return name.isEmpty() ? name : Character.toLowerCase(name.charAt(0)) + name.substring(1);
    }

    /** Upper case at the start. */
    public static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    /** An assembly's name as a heading; an abbreviation that its parts write in capitals stays one ("EGR"). */
    public static String heading(String group, List<String> parts) {
        if (group.isEmpty()) {
            return "Other parts";
        }
        String capitals = group.toUpperCase(Locale.ROOT);
        boolean abbreviation = parts.stream().anyMatch(name -> (" " + name + " ").contains(" " + capitals + " "));
        return abbreviation ? capitals : capital(group.replace('-', ' '));
    }
}
