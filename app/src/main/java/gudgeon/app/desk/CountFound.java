package gudgeon.app.desk;

import gudgeon.core.book.Body;
import gudgeon.core.book.JobState;
import gudgeon.core.book.Strip;
import gudgeon.core.book.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;

/**
 * How a joint was found: how many fasteners, which, where they went, what differs from the file.
 *
 * @param joint id or name
 * @param count fasteners counted; empty for the file's
 * @param pieces what they were; may be empty
 * @param bag where they went; empty to leave it
 * @param differs how it differs from the file, in words; may be empty
 * @param insteadOfLast whether the last count was wrong and no longer counts; otherwise both are kept
 */
public record CountFound(
        String joint, OptionalInt count, List<Strip.Piece> pieces, String bag, String differs, boolean insteadOfLast)
        implements Deed {
    public CountFound {
        pieces = List.copyOf(pieces);
    }

    /** The last count of a joint was wrong. */
    public static CountFound wrongCount(String joint, int count) {
        return new CountFound(joint, OptionalInt.of(count), List.of(), "", "", true);
    }

    @Override
    public Telling tell(Job job) {
        NameSearch names = new NameSearch(job.engine());
        List<String> ids = names.joints(List.of(joint));
        List<FieldProblem> problems = new ArrayList<>(Checks.unknown("joint", names));
        problems.addAll(Checks.count(count));
        problems.addAll(Checks.bag(bag));
        problems.addAll(Checks.text("differs", differs));
        if (!problems.isEmpty()) {
            return new Telling.Wrong(problems);
        }
        String id = ids.getFirst();
        List<Body> bodies = new ArrayList<>();
        String kept = bag.strip();
        if (insteadOfLast) {
            Optional<UUID> last = lastCount(job, id);
            if (kept.isEmpty()) {
                kept = Optional.ofNullable(job.facts().findings().joints().get(id))
                        .map(found -> found.bag())
                        .orElse("");
            }
            last.ifPresent(entry -> bodies.add(new Word.Withdrawn(entry, "")));
        }
        bodies.add(new Strip.AsFound(id, count.orElse(job.fasteners(id)), pieces, kept, differs.strip()));
        return new Telling.Facts(bodies, List.of());
    }

    private static Optional<UUID> lastCount(Job job, String joint) {
        return job.state().history().reversed().stream()
                .filter(told -> told.counts()
                        && told.entry().body() instanceof Strip.AsFound found
                        && found.joint().equals(joint))
                .map(JobState.Told::entry)
                .map(entry -> entry.id())
                .findFirst();
    }
}
