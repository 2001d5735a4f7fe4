package gudgeon.app.desk;

import gudgeon.core.book.Fault;
import gudgeon.core.book.RescueLadder;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Fastener;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Fasteners resist, are damaged or missing.
 *
 * @param joint id or name
 * @param fasteners ids, or their numbers in the joint; empty when it is not said which
 * @param note may be empty
 */
public record TroubleMet(String joint, Fault.Kind kind, List<String> fasteners, String note) implements Deed {
    public TroubleMet {
        fasteners = List.copyOf(fasteners);
    }

    @Override
    public Telling tell(Job job) {
        NameSearch names = new NameSearch(job.engine());
        List<String> ids = names.joints(List.of(joint));
        List<FieldProblem> problems = new ArrayList<>(Checks.unknown("joint", names));
        problems.addAll(Checks.text("note", note));
        List<String> known =
                problems.isEmpty() ? fasteners(job.engine(), ids.getFirst(), fasteners, problems) : List.of();
        return problems.isEmpty()
                ? Telling.facts(new Fault.Trouble(ids.getFirst(), kind, known, note.strip()))
                : new Telling.Wrong(problems);
    }

    /** Ids of fasteners given as ids or as numbers from 1. */
    static List<String> fasteners(Engine engine, String joint, List<String> words, List<FieldProblem> problems) {
        List<String> all = engine.joint(joint).makeup().fasteners().stream()
                .map(Fastener::id)
                .toList();
        List<String> found = new ArrayList<>();
        for (String word : words) {
            String plain = word.strip();
            Optional<String> id = all.stream()
                    .filter(fastener -> fastener.equals(plain) || fastener.equals(joint + "/" + plain))
                    .findFirst()
                    .or(() -> all.size() == 1 && plain.equals("1") ? Optional.of(all.getFirst()) : Optional.empty());
            id.ifPresentOrElse(
                    found::add,
                    () -> problems.add(new FieldProblem(
                            "fasteners", FieldProblem.Kind.UNKNOWN, Checks.shortened(plain), all, "")));
        }
        return found;
    }

    /** What can be tried, gentlest first, without what was tried already on this joint. */
    public static List<RescueLadder.Rung> ladder(Job job, String joint, Fault.Kind kind) {
        List<String> tried = job.facts().findings().troubles().stream()
                .filter(trouble -> trouble.trouble().joint().equals(joint))
                .flatMap(trouble -> trouble.tried().stream())
                .map(Fault.Rescue::rung)
                .toList();
        return RescueLadder.of(kind).rungs().stream()
                .filter(rung -> !tried.contains(rung.id()))
                .toList();
    }
}
