package gudgeon.app.desk;

import gudgeon.core.book.Setup;
import java.util.List;

/**
 * A joint will not come, or comes after all.
 *
 * @param comes whether it comes after all
 */
public record JointRefuses(String joint, boolean comes) implements Deed {
    @Override
    public Telling tell(Job job) {
        NameSearch names = new NameSearch(job.engine());
        List<String> ids = names.joints(List.of(joint));
        List<FieldProblem> problems = Checks.unknown("joint", names);
        if (!problems.isEmpty()) {
            return new Telling.Wrong(problems);
        }
        String id = ids.getFirst();
        boolean refuses = job.facts().setting().willNotCome().contains(id);
        if (refuses != comes) {
            FieldProblem.Kind kind = comes ? FieldProblem.Kind.NOT_DONE : FieldProblem.Kind.ALREADY_DONE;
            return Telling.wrong(FieldProblem.of("joint", kind, id));
        }
        return Telling.facts(comes ? new Setup.ComesAfterAll(id) : new Setup.WillNotCome(id));
    }
}
