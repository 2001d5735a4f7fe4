package gudgeon.app.desk;

import gudgeon.app.document.Names;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.LiftingWay;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Finds what a person's words name in an engine: an id, a name or one of its other names in any case, or {@code injector-*}
 * for all copies, or a suggestion as it was told. Collects the words that name nothing.
 */
final class NameSearch {
    private static final int MOST_NEAR = 3;

    private final Engine engine;
    private final List<UnknownName> unknown = new ArrayList<>();

    NameSearch(Engine engine) {
        this.engine = engine;
    }

    /** Words that named nothing so far. */
    List<UnknownName> unknown() {
        return List.copyOf(unknown);
    }

    List<String> parts(List<String> words) {
        return search(UnknownName.Sort.PART, words, partEntries());
    }

    List<String> joints(List<String> words) {
        return search(UnknownName.Sort.JOINT, words, jointEntries());
    }

    List<String> jointsOrReady(List<String> words) {
        List<Entry> entries =
                Stream.concat(jointEntries().stream(), readyEntries().stream()).toList();
        return search(UnknownName.Sort.JOINT_OR_READY, words, entries);
    }

    /** Joints, preparations or parts. */
    List<String> anything(List<String> words) {
        List<Entry> entries = Stream.of(jointEntries(), readyEntries(), partEntries())
                .flatMap(List::stream)
                .toList();
        return search(UnknownName.Sort.JOINT_OR_READY, words, entries);
    }

    List<String> circuits(List<String> words) {
        List<Entry> entries = engine.circuits().stream()
                .map(circuit -> new Entry(circuit.id(), List.of(circuit.name())))
                .toList();
        return search(UnknownName.Sort.CIRCUIT, words, entries);
    }

    List<String> features(List<String> words) {
        List<Entry> entries = engine.features().stream()
                .map(feature -> new Entry(feature.id(), List.of(feature.name())))
                .toList();
        return search(UnknownName.Sort.FEATURE, words, entries);
    }

    List<String> ways(List<String> words) {
        List<Entry> entries = engine.workplace().waysOfLifting().stream()
                .map(LiftingWay::name)
                .map(name -> new Entry(name, List.of()))
                .toList();
        return search(UnknownName.Sort.WAY_OF_LIFTING, words, entries);
    }

    /** The words themselves, those that are none of the given ones noted as unknown. */
    List<String> specifications(List<String> words, List<String> known) {
        List<Entry> entries =
                known.stream().map(spec -> new Entry(spec, List.of())).toList();
        return search(UnknownName.Sort.SPECIFICATION, words, entries);
    }

    private List<Entry> partEntries() {
        return engine.parts().stream()
                .map(part -> new Entry(
                        part.id(),
                        Stream.concat(Stream.of(part.name()), part.care().otherNames().stream())
                                .toList()))
                .toList();
    }

    private List<Entry> jointEntries() {
        return engine.joints().stream()
                .map(joint -> new Entry(joint.id(), List.of(joint.name())))
                .toList();
    }

    private List<Entry> readyEntries() {
        return engine.ready().stream()
                .map(ready -> new Entry(ready.id(), List.of(ready.name())))
                .toList();
    }

    private List<String> search(UnknownName.Sort sort, List<String> words, List<Entry> entries) {
        List<String> found = new ArrayList<>();
        for (String word : words) {
            List<String> ids = search(word.strip(), entries);
            if (ids.isEmpty()) {
                unknown.add(new UnknownName(sort, word, near(word, entries)));
            }
            found.addAll(ids);
        }
        return found.stream().distinct().toList();
    }

    /** Things that words may have meant, whatever they are; nearest first. */
    List<UnknownName.Near> near(String words) {
        return near(words, Stream.concat(partEntries().stream(), jointEntries().stream()).toList());
    }

    /** Things called something like it; copies that differ in their number count as one. */
    private static List<UnknownName.Near> near(String word, List<Entry> entries) {
        Map<String, List<Entry>> alike = new LinkedHashMap<>();
        for (Entry entry : Nearest.among(word, entries, Entry::words)) {
            alike.computeIfAbsent(entry.unnumbered(), key -> new ArrayList<>()).add(entry);
        }
        return alike.values().stream().limit(MOST_NEAR).map(NameSearch::near).toList();
    }

    private static UnknownName.Near near(List<Entry> alike) {
        Entry first = alike.getFirst();
        List<String> names = Names.gathered(
                alike.stream().map(Entry::name).sorted().map(Names::inSentence).toList());
        boolean copies = alike.size() > 1
                && names.size() == 1
                && alike.stream().allMatch(entry -> entry.id().matches(".*-[0-9]+"));
        return copies
                ? new UnknownName.Near(first.id().replaceFirst("[0-9]+$", "*"), names.getFirst())
                : new UnknownName.Near(first.id(), first.name());
    }

    private static List<String> search(String typed, List<Entry> entries) {
        String word = typed.replaceFirst("^.*\\(([^ ()]+)\\)$", "$1"); // as it is told: "piston rings (ring-set)"
        if (word.endsWith("*")) {
            return all(word.substring(0, word.length() - 1), entries.stream().map(Entry::id).toList());
        }
        if (entries.stream().anyMatch(entry -> entry.id().equals(word))) {
            return List.of(word);
        }
        String wanted = Nearest.plain(word);
        List<String> named = entries.stream()
                .filter(entry ->
                        entry.words().anyMatch(own -> Nearest.plain(own).equals(wanted)))
                .map(Entry::id)
                .toList();
        return named.size() == 1 ? named : List.of();
    }

    /** All copies; when there are none, whatever begins so. */
    private static List<String> all(String stem, List<String> ids) {
        List<String> copies = ids.stream()
                .filter(id -> id.matches(Pattern.quote(stem) + "[0-9]+"))
                .toList();
        return copies.isEmpty()
                ? ids.stream().filter(id -> id.startsWith(stem)).toList()
                : copies;
    }

    private record Entry(String id, List<String> names) {
        String name() {
            return names.isEmpty() ? id : names.getFirst();
        }

        /** Its name without its own number. */
        String unnumbered() {
            return name().replaceAll("[0-9]+", "#");
        }

        Stream<String> words() {
            return Stream.concat(Stream.of(id), names.stream());
        }
    }
}
