package gudgeon.core.ordering;

import java.util.List;
import java.util.Locale;

/** Sections of an order list, in the order in which they stand on the sheet. */
public enum SectionKind {
    /** Gaskets, O-rings, shaft seals. */
    GASKETS(List.of("gasket", "o-ring", "seal", "grommet")),
    /** Sealing and other washers. */
    WASHERS(List.of("washer")),
    /** Bolts, studs, nuts and screws. */
    FASTENERS(List.of("bolt", "nut", "screw", "stud")),
    /** Clips, circlips, pins, ties. */
    CLIPS(List.of("clip", "circlip", "snap ring", "split pin", "roll pin", "cotter", "tie", "collets")),
    /** Pipes, hoses and lines. */
    PIPES(List.of("pipe", "hose", "line", "tube")),
    /** Everything else that is bought by the piece. */
    OTHER(List.of()),
    /** Fluids by volume. */
    FLUIDS(List.of()),
    /** Sealants, locking compounds and locking pieces. */
    SEALANTS(List.of());

    /** Most telling first: a sealing washer is a washer, a hose clip is a clip, a pipe gasket is a gasket. */
    private static final List<SectionKind> BY_TELLING = List.of(WASHERS, GASKETS, CLIPS, FASTENERS, PIPES);

    private final List<String> words;

    SectionKind(List<String> words) {
        this.words = words;
    }

    /** The section for something bought by the piece, from the words of its specification; {@link #OTHER} by default. */
    static SectionKind ofPiece(String spec) {
        String words = " " + spec.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9-]+", " ") + " ";
        return BY_TELLING.stream()
                .filter(kind -> kind.words.stream().anyMatch(word -> holds(words, word)))
                .findFirst()
                .orElse(OTHER);
    }

    private static boolean holds(String words, String word) {
        return words.contains(" " + word + " ")
                || words.contains(" " + word + "s ")
                || words.contains(" " + word + "ing ");
    }
}
