package gudgeon.app.desk;

import gudgeon.core.book.Build;
import java.util.List;

/** All fasteners of a joint come out again and are renewed: it is put together anew, from its first stage. */
public record FastenersRenewed(String joint, String why) implements Deed {
    @Override
    public Telling tell(Job job) {
        NameSearch names = new NameSearch(job.engine());
        List<String> ids = names.joints(List.of(joint));
        List<FieldProblem> problems = new java.util.ArrayList<>(Checks.unknown("joint", names));
        problems.addAll(Checks.text("why", why));
        return problems.isEmpty()
                ? Telling.facts(new Build.StartedAgain(ids.getFirst(), why.strip()))
                : new Telling.Wrong(problems);
    }
}
