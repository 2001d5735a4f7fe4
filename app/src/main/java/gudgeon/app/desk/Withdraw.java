package gudgeon.app.desk;

import gudgeon.core.book.JobState.Told;
import gudgeon.core.book.Setup;
import gudgeon.core.book.Word;
import java.util.Optional;
import java.util.UUID;

/**
 * One entry no longer counts; withdrawing the withdrawal brings it back.
 *
 * @param entry its id
 * @param why a word on it; may be empty
 */
public record Withdraw(UUID entry, String why) implements Deed {
    @Override
    public Telling tell(Job job) {
        Optional<Told> told = job.state().history().stream()
                .filter(candidate -> candidate.entry().id().equals(entry))
                .findFirst();
        if (told.isEmpty()) {
            return Telling.wrong(FieldProblem.of("entry", FieldProblem.Kind.UNKNOWN, entry.toString()));
        }
        if (!told.get().counts()) {
            return Telling.wrong(FieldProblem.of("entry", FieldProblem.Kind.NOTHING_TO_UNDO, entry.toString()));
        }
        if (told.get().entry().body() instanceof Setup.JobOpened
                || told.get().entry().body() instanceof Setup.EngineAdopted) {
            return Telling.wrong(FieldProblem.of("entry", FieldProblem.Kind.NOTHING_TO_UNDO, entry.toString()));
        }
        return Checks.text("why", why).isEmpty()
                ? Telling.facts(new Word.Withdrawn(entry, why.strip()))
                : new Telling.Wrong(Checks.text("why", why));
    }
}
