package gudgeon.app.desk;

import gudgeon.app.format.EntryJson;
import gudgeon.core.book.Body;
import gudgeon.core.book.Ref;
import gudgeon.core.book.Setup;
import gudgeon.core.book.Word;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Anything a book can hold, by its kind and its fields as words: {@code rag in}, {@code where=bore count=2}.
 *
 * @param kind a kind of entry, docs/book.md
 * @param fields by name, as typed; a list is parted by commas
 * @param about what it is about beside what it names
 */
public record Tell(String kind, Map<String, String> fields, List<Ref> about) implements Deed {
    public Tell {
        about = List.copyOf(about);
    }

    @Override
    public Telling tell(Job job) {
        Class<? extends Body> record =
                EntryJson.findKind(kind.strip().toLowerCase(Locale.ROOT)).orElse(null);
        if (record == null || !canBeTold(record)) {
            List<String> kinds = kinds();
            List<String> near = Nearest.to(kind, kinds);
            return Telling.wrong(new FieldProblem(
                    "kind", FieldProblem.Kind.UNKNOWN, Checks.shortened(kind), near.isEmpty() ? kinds : near, ""));
        }
        List<FieldProblem> problems = new ArrayList<>();
        List<String> known = fieldsOf(record);
        fields.keySet().stream()
                .filter(field -> !known.contains(field))
                .forEach(field -> problems.add(new FieldProblem(field, FieldProblem.Kind.UNKNOWN, field, known, "")));
        Object[] values = Arrays.stream(record.getRecordComponents())
                .map(component -> value(component, problems))
                .toArray();
        if (!problems.isEmpty()) {
            return new Telling.Wrong(problems);
        }
        return made(job, record, values);
    }

    private Telling made(Job job, Class<? extends Body> record, Object[] values) {
        Class<?>[] types = Arrays.stream(record.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        try {
            return new Say(record.getDeclaredConstructor(types).newInstance(values), about).tell(job);
        } catch (InvocationTargetException e) {
            String said = String.valueOf(
                    e.getCause() == null ? e.getMessage() : e.getCause().getMessage());
            return Telling.wrong(new FieldProblem("kind", FieldProblem.Kind.FILE, kind, List.of(), said));
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("a record can be made: " + record, e);
        }
    }

    /** Kinds that can be told like this; the others have deeds of their own. */
    public static List<String> kinds() {
        return EntryJson.allKinds().stream()
                .filter(kind -> EntryJson.findKind(kind).filter(Tell::canBeTold).isPresent())
                .toList();
    }

    /** The fields of a kind, in order; empty for an unknown one. */
    public static List<String> fieldsOf(String kind) {
        return EntryJson.findKind(kind).map(Tell::fieldsOf).orElse(List.of());
    }

    private static List<String> fieldsOf(Class<? extends Body> record) {
        return Arrays.stream(record.getRecordComponents())
                .map(RecordComponent::getName)
                .toList();
    }

    private static boolean canBeTold(Class<? extends Body> record) {
        return record != Setup.JobOpened.class
                && record != Setup.EngineAdopted.class
                && record != Setup.EngineCorrected.class
                && record != gudgeon.core.book.Strip.AsFound.class
                && record != gudgeon.core.book.Gauging.ReadingTaken.class
                && record != Word.Withdrawn.class
                && record != Word.Photo.class
                && gudgeon.core.book.Build.class.isAssignableFrom(record) == isPlainBuild(record);
    }

    /** Stages are turned by deeds that look at the plan; forces and licensed work need none. */
    private static boolean isPlainBuild(Class<? extends Body> record) {
        return record == gudgeon.core.book.Build.TurningForce.class
                || record == gudgeon.core.book.Build.LicensedDone.class;
    }

    private Object value(RecordComponent component, List<FieldProblem> problems) {
        String typed = fields.getOrDefault(component.getName(), "").strip();
        Class<?> type = component.getType();
        try {
            if (type == int.class) {
                return typed.isEmpty() ? 0 : Integer.parseInt(typed);
            }
            if (type == double.class) {
                return typed.isEmpty() ? 0.0 : Double.parseDouble(typed);
            }
        } catch (NumberFormatException e) {
            problems.add(FieldProblem.of(component.getName(), FieldProblem.Kind.NUMBER, Checks.shortened(typed)));
            return 0;
        }
        if (type == boolean.class) {
            return List.of("yes", "true", "y", "1").contains(typed.toLowerCase(Locale.ROOT));
        }
        if (type == List.class) {
            return Arrays.stream(typed.split(",", -1))
                    .map(String::strip)
                    .filter(word -> !word.isEmpty())
                    .toList();
        }
        if (type.isEnum()) {
            return constant(component, type, typed, problems);
        }
        return typed;
    }

    private static Object constant(
            RecordComponent component, Class<?> type, String typed, List<FieldProblem> problems) {
        List<Object> constants = List.of(type.getEnumConstants());
        for (Object constant : constants) {
            if (constant.toString().equalsIgnoreCase(typed)) {
                return constant;
            }
        }
        List<String> words = constants.stream()
                .map(constant -> constant.toString().toLowerCase(Locale.ROOT))
                .toList();
        problems.add(new FieldProblem(component.getName(), FieldProblem.Kind.UNKNOWN, typed, words, ""));
        return constants.getFirst();
    }
}
