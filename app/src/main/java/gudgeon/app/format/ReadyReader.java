package gudgeon.app.format;

import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Precedence;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.ReadyKind;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads one ready operation that is written in the file. */
final class ReadyReader {
    /** Typical, when the file says nothing. */
    private static final long SECONDS = 120;

    private static final List<ReadyKind> WRITTEN = List.of(
            ReadyKind.RECORD,
            ReadyKind.MAKE_SAFE,
            ReadyKind.SUPPORT,
            ReadyKind.STRAP,
            ReadyKind.PIN,
            ReadyKind.HOLDING_TOOL);

    private final Scope scope;
    private final ConditionReader conditions;

    ReadyReader(Scope scope) {
        this.scope = scope;
        this.conditions = new ConditionReader(scope);
    }

    Ready read(Copies.Entry entry, List<Precedence> precedences) {
        String id = entry.id();
        Fields fields = scope.fields(entry.body(), Scope.called(Names.Kind.READY, id));
        fields.has("each");
        scope.names().place(Names.Kind.READY, id, "needs", fields.at("needs"));
        scope.names().place(Names.Kind.READY, id, "access", fields.at("access"));
        scope.names()
                .resolveAll(fields.list("before"), Names.Kind.JOINT, Names.Kind.READY)
                .forEach(then -> precedences.add(new Precedence(id, then, "written with " + id)));
        String name = fields.text("name", Scope.nameOf(id));
        Ready ready = new Ready(
                id,
                name,
                kind(fields),
                fields.seconds("time", Scope.LONG_TIME).orElse(SECONDS),
                scope.zone(fields, scope.startZone()),
                fields.texts("tools"),
                conditions.read(fields, "access"),
                scope.ready(fields, "needs"),
                Optional.empty(),
                effect(fields));
        fields.close();
        return ready;
    }

    private ReadyKind kind(Fields fields) {
        List<String> words = WRITTEN.stream().map(ReadyKind::word).toList();
        fields.need("kind");
        String word = fields.word("kind", ReadyKind.MAKE_SAFE.word(), words);
        return Arrays.stream(ReadyKind.values())
                .filter(kind -> kind.word().equals(word))
                .findFirst()
                .orElse(ReadyKind.MAKE_SAFE);
    }

    private Ready.Effect effect(Fields fields) {
        return new Ready.Effect(
                OptionalDouble.empty(),
                scope.parts(fields, "carries"),
                Joint.Hold.NONE,
                scope.engineState(fields),
                fields.text("restore", ""),
                List.of(),
                scope.cautions(fields, "cautions"),
                fields.text("note", ""));
    }
}
