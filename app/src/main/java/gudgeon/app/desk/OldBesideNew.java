package gudgeon.app.desk;

import gudgeon.core.book.Facts;
import gudgeon.core.book.Keeping;
import gudgeon.core.book.Strip;
import gudgeon.core.engine.Fastener;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Spend;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A new piece laid beside the old one, fact by fact: how many, how long, which size, how many holes. What the old one has is what
 * was written down as found, else what the engine file says.
 *
 * @param facts those that the piece has
 */
public record OldBesideNew(String spec, List<Fact> facts) {
    /** Lengths that a rule cannot tell apart. Common practice: half a millimetre. */
    private static final double SAME_LENGTH_MM = 0.5;

    private static final String NUMBER = "[0-9]{1,6}([.][0-9]{1,4})?";
    private static final Pattern SIZES = Pattern.compile("[0-9]+(?:[.][0-9]+)?(?: ?[x×] ?[0-9]+(?:[.][0-9]+)?){1,2}");

    public OldBesideNew {
        facts = List.copyOf(facts);
    }

    /** Sorts of fact. */
    public enum Sort {
        COUNT,
        /** Millimetres, under the head. */
        LENGTH,
        /** Thread, or inner, outer and thickness. */
        SIZE,
        /** Holes for fasteners. */
        HOLES;

        /** The word that stands in the book. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** A fact of the old one. @param was its value; empty when it is not known */
    public record Fact(Sort sort, String was) {}

    /** What can be compared for a specification that undoing these joints or preparations uses up. */
    public static OldBesideNew of(Job job, String spec) {
        Map<Sort, String> facts = new LinkedHashMap<>();
        int count = 0;
        for (Joint joint : job.engine().joints()) {
            for (Spend spend : joint.makeup().spends()) {
                if (spend.spec().equals(spec)) {
                    count = Math.max(count, spend.count());
                    add(job, joint, spec, facts);
                }
            }
        }
        Matcher sizes = SIZES.matcher(spec);
        if (!facts.containsKey(Sort.SIZE) && sizes.find()) {
            facts.put(Sort.SIZE, sizes.group());
        }
        List<Fact> all = new ArrayList<>();
        all.add(new Fact(Sort.COUNT, count == 0 ? "" : String.valueOf(count)));
        facts.forEach((sort, was) -> all.add(new Fact(sort, was)));
        return new OldBesideNew(spec, all);
    }

    private static void add(Job job, Joint joint, String spec, Map<Sort, String> facts) {
        Optional<Fastener> fastener = joint.makeup().fasteners().stream()
                .filter(one -> !one.thread().isEmpty() && spec.contains(one.thread()))
                .findFirst();
        Facts.FoundJoint found = job.facts().findings().joints().get(joint.id());
        List<Strip.Piece> pieces = found == null ? List.of() : found.pieces();
        if (fastener.isPresent()) {
            facts.put(Sort.SIZE, thread(pieces).orElse(fastener.get().thread()));
            if (!spec.contains("nut")) {
                length(pieces)
                        .or(() -> fastener.get().length().map(length -> number(length.millimetres())))
                        .ifPresent(length -> facts.put(Sort.LENGTH, length));
            }
        } else if (spec.contains("gasket") && job.fasteners(joint.id()) > 1) {
            facts.merge(Sort.HOLES, String.valueOf(job.fasteners(joint.id())), (a, b) -> a);
        }
    }

    private static Optional<String> thread(List<Strip.Piece> pieces) {
        return same(pieces.stream().map(Strip.Piece::thread).filter(thread -> !thread.isBlank()).toList());
    }

    private static Optional<String> length(List<Strip.Piece> pieces) {
        return same(pieces.stream()
                .filter(piece -> piece.length_mm() > 0)
                .map(piece -> number(piece.length_mm()))
                .toList());
    }

    /** The value that all have; empty when there is none, or they differ. */
    private static Optional<String> same(List<String> values) {
        return values.stream().distinct().count() == 1 ? Optional.of(values.getFirst()) : Optional.empty();
    }

    private static String number(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }

    /** Whether old and new agree in one fact; what is not known of the old one contradicts nothing. */
    public static boolean agree(Keeping.Compared fact) {
        String was = plain(fact.was());
        String now = plain(fact.now());
        if (was.isEmpty() || now.isEmpty() || was.equals(now)) {
            return true;
        }
        if (!was.matches(NUMBER) || !now.matches(NUMBER)) {
            return false;
        }
        double apart = Math.abs(Double.parseDouble(was) - Double.parseDouble(now));
        return fact.fact().equals(Sort.LENGTH.word()) ? apart <= SAME_LENGTH_MM : apart == 0;
    }

    private static String plain(String value) {
        return value.strip()
                .toLowerCase(Locale.ROOT)
                .replace('×', 'x')
                .replace(',', '.')
                .replaceAll("\\s|mm$", "");
    }

    /** Facts in which the last comparison of a specification found a difference: to be told before it is fitted. */
    public static List<Keeping.Compared> differences(Job job, String spec) {
        return job.facts().kept().compared().getOrDefault(spec, Map.of()).values().stream()
                .filter(fact -> !agree(fact))
                .toList();
    }
}
