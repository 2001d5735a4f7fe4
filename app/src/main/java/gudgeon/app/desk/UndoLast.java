package gudgeon.app.desk;

import gudgeon.core.book.Body;
import gudgeon.core.book.Entry;
import gudgeon.core.book.JobState.Told;
import gudgeon.core.book.Setup;
import gudgeon.core.book.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * The last thing that was said no longer counts: all entries of its stroke are withdrawn. Saying it again goes one further
 * back. What opened the job, sessions and withdrawals are passed over.
 */
public record UndoLast() implements Deed {
    @Override
    public Telling tell(Job job) {
        List<Entry> stroke = lastStroke(job);
        if (stroke.isEmpty()) {
            return Telling.wrong(FieldProblem.of("job", FieldProblem.Kind.NOTHING_TO_UNDO, ""));
        }
        List<Body> bodies = new ArrayList<>();
        stroke.reversed().forEach(entry -> bodies.add(new Word.Withdrawn(entry.id(), "")));
        return new Telling.Facts(bodies, List.of());
    }

    /** The entries that this would withdraw, in their order; empty when there is nothing to undo. */
    public static List<Entry> lastStroke(Job job) {
        List<Told> history = job.state().history();
        Optional<Told> last = history.reversed().stream()
                .filter(told -> told.counts() && canBeUndone(told.entry()))
                .findFirst();
        if (last.isEmpty()) {
            return List.of();
        }
        int at = history.indexOf(last.get());
        List<Entry> stroke = new ArrayList<>();
        stroke.add(last.get().entry());
        while (at > 0
                && follows(
                        history.get(at).entry().id(),
                        history.get(at - 1).entry().id())) {
            at--;
            Told earlier = history.get(at);
            if (earlier.counts() && canBeUndone(earlier.entry())) {
                stroke.addFirst(earlier.entry());
            }
        }
        return stroke;
    }

    private static boolean follows(UUID later, UUID earlier) {
        return EntryIds.following(earlier, 1).equals(later);
    }

    private static boolean canBeUndone(Entry entry) {
        return switch (entry.body()) {
            case Setup.JobOpened opened -> false;
            case Setup.EngineAdopted adopted -> false;
            case Setup.Settings settings -> entry.seq() > 4;
            case Setup.TargetSet target -> entry.seq() > 4;
            case Setup.SessionStarted started -> false;
            case Setup.SessionEnded ended -> false;
            case Word.Withdrawn withdrawn -> false;
            default -> true;
        };
    }
}
