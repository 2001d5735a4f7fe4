package gudgeon.app.desk;

import gudgeon.core.book.Body;
import gudgeon.core.book.Keeping;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;

/**
 * Openings are shut against dirt, in one go.
 *
 * @param openings joints that stand open, or openings in the owner's own words; each is an entry of its own
 * @param with the cover; may be empty
 */
public record CoveredAtOnce(List<String> openings, String with) implements Deed {
    public CoveredAtOnce {
        openings = List.copyOf(new LinkedHashSet<>(openings));
    }

    @Override
    public Telling tell(Job job) {
        List<FieldProblem> problems = new ArrayList<>(Checks.text("with", with));
        openings.forEach(opening -> problems.addAll(Checks.name("about", opening)));
        if (openings.stream().allMatch(String::isBlank)) {
            problems.add(FieldProblem.of("about", FieldProblem.Kind.EMPTY, ""));
        }
        if (!problems.isEmpty()) {
            return new Telling.Wrong(problems);
        }
        List<Body> bodies = new ArrayList<>();
        openings.forEach(opening -> bodies.add(new Keeping.Covered(opening.strip(), with.strip())));
        return new Telling.Facts(bodies, List.of());
    }
}
