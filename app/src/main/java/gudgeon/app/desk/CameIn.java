package gudgeon.app.desk;

import gudgeon.core.book.Body;
import gudgeon.core.book.Keeping;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Something arrived, and was laid beside the old one.
 *
 * @param spec what it is
 * @param count how many
 * @param same whether somebody looked and saw no difference; a fact that differs outweighs it
 * @param facts what was measured or counted on the new one, by sort; blank values were not looked at
 * @param note may be empty
 */
public record CameIn(String spec, int count, boolean same, Map<OldBesideNew.Sort, String> facts, String note)
        implements Deed {
    private static final int LONGEST = 40;

    public CameIn {
        facts = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(facts));
    }

    @Override
    public Telling tell(Job job) {
        List<FieldProblem> problems = new ArrayList<>(Checks.text("note", note));
        problems.addAll(Checks.text("spec", spec));
        if (spec.isBlank()) {
            problems.add(FieldProblem.of("spec", FieldProblem.Kind.EMPTY, ""));
        }
        if (count < 1 || count > 9_999) {
            problems.add(FieldProblem.of("count", FieldProblem.Kind.NUMBER, String.valueOf(count)));
        }
        Map<OldBesideNew.Sort, String> old = new LinkedHashMap<>();
        OldBesideNew.of(job, spec).facts().forEach(fact -> old.put(fact.sort(), fact.was()));
        List<Keeping.Compared> compared = new ArrayList<>();
        facts.forEach((sort, typed) -> {
            String now = typed.strip();
            if (!sound(sort, now)) {
                problems.add(FieldProblem.of(sort.word(), FieldProblem.Kind.NUMBER, Checks.shortened(now)));
            } else if (!now.isEmpty()) {
                compared.add(new Keeping.Compared(spec, sort.word(), old.getOrDefault(sort, ""), now));
            }
        });
        if (!problems.isEmpty()) {
            return new Telling.Wrong(problems);
        }
        boolean agree = compared.stream().allMatch(OldBesideNew::agree) && (same || !compared.isEmpty());
        List<Body> bodies = new ArrayList<>();
        bodies.add(new Keeping.Received(spec, count, agree, note.strip()));
        bodies.addAll(compared);
        return new Telling.Facts(bodies, List.of());
    }

    private static boolean sound(OldBesideNew.Sort sort, String now) {
        return now.isEmpty()
                || switch (sort) {
                    case COUNT, HOLES -> now.matches("[0-9]{1,4}");
                    case LENGTH -> now.matches("[0-9]{1,4}([.,][0-9]{1,3})? ?(mm)?");
                    case SIZE -> now.length() <= LONGEST;
                };
    }
}
