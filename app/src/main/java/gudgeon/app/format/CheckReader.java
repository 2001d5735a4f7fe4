package gudgeon.app.format;

import gudgeon.core.engine.Check;
import java.util.List;

/** Reads one check of the way back. */
final class CheckReader {
    private static final List<String> KINDS = List.of("check", "turn", "wait", "prime", "adjust");

    /** Typical, when the file says nothing. */
    private static final long SECONDS = 300;

    private final Scope scope;

    CheckReader(Scope scope) {
        this.scope = scope;
    }

    Check read(Copies.Entry entry) {
        String id = entry.id();
        Fields fields = scope.fields(entry.body(), Scope.called(Names.Kind.CHECK, id));
        fields.has("each");
        Check check = new Check(
                id,
                fields.text("name", Scope.nameOf(id)),
                fields.word("kind", "check", KINDS),
                scope.names().resolveAll(fields.list("when"), Names.Kind.JOINT, Names.Kind.READY),
                BuildMarks.read(fields, "after", scope),
                BuildMarks.read(fields, "before", scope),
                fields.yes("gate"),
                fields.seconds("wait", Scope.LONG_TIME).orElse(0L),
                new Check.Work(
                        scope.zone(fields, scope.startZone()),
                        fields.texts("tools"),
                        fields.seconds("time", Scope.WORK_TIME).orElse(SECONDS),
                        scope.cautions(fields, "cautions"),
                        fields.text("note", "")));
        fields.close();
        return check;
    }
}
