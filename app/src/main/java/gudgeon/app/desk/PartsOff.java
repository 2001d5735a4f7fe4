package gudgeon.app.desk;

import gudgeon.core.book.Body;
import gudgeon.core.book.Keeping;
import gudgeon.core.book.Strip;
import java.util.ArrayList;
import java.util.List;

/**
 * Parts come away as one piece.
 *
 * @param parts ids or names
 * @param place where they lie; empty when not said
 * @param aside whether they still hang on the engine
 * @param marked how they were marked, so that they cannot be mixed up; empty when they were not
 */
public record PartsOff(List<String> parts, String place, boolean aside, String marked) implements Deed {
    public PartsOff {
        parts = List.copyOf(parts);
    }

    @Override
    public Telling tell(Job job) {
        NameSearch names = new NameSearch(job.engine());
        List<String> ids = names.parts(parts);
        List<FieldProblem> problems = new ArrayList<>(Checks.unknown("parts", names));
        problems.addAll(Checks.text("place", place));
        problems.addAll(Checks.text("marked", marked));
        if (parts.isEmpty()) {
            problems.add(FieldProblem.of("parts", FieldProblem.Kind.EMPTY, ""));
        }
        if (problems.isEmpty() && job.facts().stripped().away().keySet().containsAll(ids) && place.isBlank()) {
            problems.add(FieldProblem.of("parts", FieldProblem.Kind.ALREADY_DONE, String.join(", ", ids)));
        }
        if (!problems.isEmpty()) {
            return new Telling.Wrong(problems);
        }
        List<Body> bodies = new ArrayList<>();
        bodies.add(new Strip.Removed(ids, place.strip(), aside));
        if (!marked.isBlank()) {
            bodies.add(new Keeping.Marked(ids, marked.strip()));
        }
        return new Telling.Facts(bodies, List.of());
    }
}
