package gudgeon.app.web.jobs;

import gudgeon.app.desk.Job;
import gudgeon.app.desk.PlanChange;
import gudgeon.app.document.Figures;
import gudgeon.app.document.StepWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What was just written, and what it changed in the plan.
 *
 * @param text empty when nothing was written
 */
public record SaidView(String text, List<String> changes) {
    private static final int MOST = 4;

    public SaidView {
        changes = List.copyOf(changes);
    }

    /** In words. */
    public static SaidView of(Job job, Optional<JobDesk.Said> said) {
        return said.map(what -> new SaidView(
                        what.text(),
                        what.change()
                                .map(change -> changes(job, change))
                                .orElse(List.of("What it changes in the plan is being worked out."))))
                .orElse(new SaidView("", List.of()));
    }

    public boolean empty() {
        return text.isEmpty();
    }

    private static List<String> changes(Job job, PlanChange change) {
        List<String> changes = new ArrayList<>();
        if (change.isNothing()) {
            return changes;
        }
        StepWords words = new StepWords(job.engine());
        List<String> more = change.added().stream().map(words::instruction).toList();
        List<String> gone = change.gone().stream().map(words::instruction).toList();
        if (!more.isEmpty()) {
            changes.add("New in the plan: " + String.join("; ", more.subList(0, Math.min(MOST, more.size())))
                    + rest(more.size()));
        }
        if (!gone.isEmpty()) {
            changes.add("No longer needed: " + String.join("; ", gone.subList(0, Math.min(MOST, gone.size())))
                    + rest(gone.size()));
        }
        if (!change.buyMore().isEmpty()) {
            changes.add("To buy more: " + String.join(", ", StepWords.spends(change.buyMore())));
        }
        if (!change.buyLess().isEmpty()) {
            changes.add("To buy less: " + String.join(", ", StepWords.spends(change.buyLess())));
        }
        if (change.before().planned() && change.after().planned()) {
            changes.add("Time left: " + Figures.time(change.after().seconds()) + ", was "
                    + Figures.time(change.before().seconds()) + ".");
        } else if (change.before().planned()) {
            changes.add("There is no way on any more, as it stands.");
        }
        return changes;
    }

    private static String rest(int all) {
        return all > MOST ? "; and " + (all - MOST) + " more" : "";
    }
}
