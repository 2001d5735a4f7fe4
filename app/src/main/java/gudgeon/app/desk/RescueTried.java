package gudgeon.app.desk;

import gudgeon.core.book.Fault;
import java.util.ArrayList;
import java.util.List;

/**
 * A rung of the ladder was tried on a joint that gives trouble.
 *
 * @param rung id of the rung, or own words
 */
public record RescueTried(String joint, List<String> fasteners, String rung, double minutes, Fault.Outcome outcome)
        implements Deed {
    public RescueTried {
        fasteners = List.copyOf(fasteners);
    }

    @Override
    public Telling tell(Job job) {
        NameSearch names = new NameSearch(job.engine());
        List<String> ids = names.joints(List.of(joint));
        List<FieldProblem> problems = new ArrayList<>(Checks.unknown("joint", names));
        problems.addAll(Checks.minutes(minutes));
        problems.addAll(Checks.name("rung", rung));
        if (rung.isBlank()) {
            problems.add(FieldProblem.of("rung", FieldProblem.Kind.EMPTY, ""));
        }
        List<String> known = problems.isEmpty()
                ? TroubleMet.fasteners(job.engine(), ids.getFirst(), fasteners, problems)
                : List.of();
        return problems.isEmpty()
                ? Telling.facts(new Fault.Rescue(ids.getFirst(), known, rung.strip(), minutes, outcome))
                : new Telling.Wrong(problems);
    }
}
