package gudgeon.app.desk;

import gudgeon.core.book.Body;
import gudgeon.core.book.Strip;
import gudgeon.core.engine.Engine;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * It's off: a joint is undone or a preparation done, by plan or out of it. What was counted and where it went goes with it.
 *
 * @param operation id or name of the joint or preparation
 * @param count fasteners counted; empty to trust the file
 * @param bag what is written on the bag; empty when none is used
 * @param minutes how long it took; 0 when not said
 * @param cut whether it was destroyed in the way that the file gives
 */
public record StepDone(String operation, OptionalInt count, String bag, double minutes, boolean cut) implements Deed {
    /** Done, as the file says. */
    public static StepDone of(String operation) {
        return new StepDone(operation, OptionalInt.empty(), "", 0, false);
    }

    @Override
    public Telling tell(Job job) {
        Engine engine = job.engine();
        NameSearch names = new NameSearch(engine);
        List<String> ids = names.jointsOrReady(List.of(operation));
        List<FieldProblem> problems = new ArrayList<>(Checks.unknown("operation", names));
        problems.addAll(Checks.counts(count, minutes));
        problems.addAll(Checks.bag(bag));
        if (!problems.isEmpty()) {
            return new Telling.Wrong(problems);
        }
        String id = ids.getFirst();
        if (job.facts().stripped().open().contains(id)) {
            return Telling.wrong(FieldProblem.of("operation", FieldProblem.Kind.ALREADY_DONE, id));
        }
        List<Body> bodies = new ArrayList<>();
        bodies.add(new Strip.OperationDone(id, cut, minutes));
        boolean joint = engine.findJoint(id).isPresent();
        if (joint && (count.isPresent() || !bag.isBlank())) {
            bodies.add(Strip.AsFound.counted(id, count.orElse(job.fasteners(id)), bag.strip()));
        }
        return new Telling.Facts(bodies, List.of());
    }
}
