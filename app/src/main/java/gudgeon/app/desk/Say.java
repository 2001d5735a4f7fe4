package gudgeon.app.desk;

import gudgeon.core.book.Body;
import gudgeon.core.book.Build;
import gudgeon.core.book.Fault;
import gudgeon.core.book.Fluid;
import gudgeon.core.book.Gauging;
import gudgeon.core.book.Keeping;
import gudgeon.core.book.Ref;
import gudgeon.core.book.Setup;
import gudgeon.core.book.Strip;
import gudgeon.core.book.Word;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;

/**
 * Anything that needs no more than that its names mean something: notes, conditions, routings, covers, rags, fluids, bags,
 * marks, orders, arrivals, sessions, settings, targets. Names in it may be ids or names; in the book stand ids.
 *
 * @param body what happened
 * @param about what it is about beside what the body names
 */
public record Say(Body body, List<Ref> about) implements Deed {
    public Say {
        about = List.copyOf(about);
    }

    /** Something about nothing but what it names. */
    public static Say that(Body body) {
        return new Say(body, List.of());
    }

    @Override
    public Telling tell(Job job) {
        NameSearch names = new NameSearch(job.engine());
        Body resolved = resolved(names);
        List<Ref> things = about.stream().map(ref -> resolved(names, ref)).toList();
        List<FieldProblem> problems = new ArrayList<>(Checks.unknown("about", names));
        problems.addAll(lengths());
        return problems.isEmpty() ? new Telling.Facts(List.of(resolved), things) : new Telling.Wrong(problems);
    }

    private static Ref resolved(NameSearch names, Ref ref) {
        List<String> found = switch (ref.sort()) {
            case PART -> names.parts(List.of(ref.id()));
            case JOINT, READY -> names.jointsOrReady(List.of(ref.id()));
            case CIRCUIT -> names.circuits(List.of(ref.id()));
            case FEATURE -> names.features(List.of(ref.id()));
            case ITEM, FASTENER, BAG, PLACE, OPENING -> List.of(ref.id());
        };
        return found.isEmpty() ? ref : new Ref(ref.sort(), found.getFirst());
    }

    private Body resolved(NameSearch names) {
        return switch (body) {
            case Strip.OperationStarted(String operation) -> new Strip.OperationStarted(operation(names, operation));
            case Strip.PutBack(String operation) -> new Strip.PutBack(any(names, operation));
            case Strip.Routing(String part, String text) -> new Strip.Routing(part(names, part), text);
            case Fault.Condition(String part, String text) -> new Fault.Condition(part(names, part), text);
            case Keeping.PartMoved(String part, String place) -> new Keeping.PartMoved(part(names, part), place);
            case Gauging.Cleaned(String part, String how, boolean clear, boolean white) ->
                new Gauging.Cleaned(part(names, part), how, clear, white);
            case Keeping.Renewed(String part, String spec) -> new Keeping.Renewed(part(names, part), spec);
            case Keeping.Marked(List<String> parts, String how) -> new Keeping.Marked(names.parts(parts), how);
            case Fluid.Drained(String circuit, double litres, String to) ->
                new Fluid.Drained(circuit(names, circuit), litres, to);
            case Fluid.Filled(String circuit, double litres) -> new Fluid.Filled(circuit(names, circuit), litres);
            case Setup.LimitConfirmed(String feature, String where) ->
                new Setup.LimitConfirmed(first(names.features(List.of(feature)), feature), where);
            case Setup.TargetSet target ->
                new Setup.TargetSet(
                        names.parts(target.off()),
                        names.parts(target.aside()),
                        names.joints(target.open()),
                        names.features(target.measure()));
            case Setup.Settings settings ->
                new Setup.Settings(
                        names.ways(settings.with()), settings.worthPerHour(), settings.units(), settings.toolbox());
            case Build.LicensedDone(String joint, String by) -> new Build.LicensedDone(operation(names, joint), by);
            case Setup.JobOpened opened -> throw mine();
            case Setup.EngineAdopted adopted -> throw mine();
            case Word.Withdrawn withdrawn -> throw mine();
            case Word.Newer newer -> throw mine();
            default -> body;
        };
    }

    private IllegalArgumentException mine() {
        return new IllegalArgumentException(
                "not said like this: " + body.getClass().getSimpleName());
    }

    private static String part(NameSearch names, String word) {
        return first(names.parts(List.of(word)), word);
    }

    private static String operation(NameSearch names, String word) {
        return first(names.jointsOrReady(List.of(word)), word);
    }

    private static String circuit(NameSearch names, String word) {
        return first(names.circuits(List.of(word)), word);
    }

    private static String any(NameSearch names, String word) {
        return first(names.anything(List.of(word)), word);
    }

    private static String first(List<String> found, String word) {
        return found.isEmpty() ? word : found.getFirst();
    }

    private List<FieldProblem> lengths() {
        List<FieldProblem> problems = new ArrayList<>();
        for (RecordComponent component : body.getClass().getRecordComponents()) {
            if (component.getType() == String.class) {
                problems.addAll(Checks.text(component.getName(), text(component)));
            }
        }
        return problems;
    }

    private String text(RecordComponent component) {
        try {
            return String.valueOf(component.getAccessor().invoke(body));
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("a record can be read", e);
        }
    }
}
