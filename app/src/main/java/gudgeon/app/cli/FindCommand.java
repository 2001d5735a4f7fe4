package gudgeon.app.cli;

import gudgeon.app.desk.FindQuestion;
import gudgeon.app.format.FindJson;
import gudgeon.app.format.Severity;
import gudgeon.core.finding.Posterior;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What is wrong, how sure, which test next, how deep. */
@Command(
        name = "find",
        mixinStandardHelpOptions = true,
        header = "Says what is most likely wrong, from what was seen and measured.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:Done", "1:The case has faults", "2:Wrong usage"},
        footer = {"", "Example: gudgeon find --case rough-idle.yaml"})
final class FindCommand implements Callable<Integer> {
    private static final double SHOWN = 0.01;
    private static final int MOST_SHOWN = 12;

    private final Screen screen;

    @Option(names = "--case", paramLabel = "CASE", required = true, description = "A case: engine facts and readings.")
    private String caseFile = "";

    @Option(names = "--json", description = "Answer as JSON (docs/json.md), and print nothing else.")
    private boolean json;

    FindCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        return switch (new FindQuestion(caseFile).ask()) {
            case FindQuestion.Answer.Faulty faulty -> {
                faulty.problems().forEach(problem -> screen.err().println(problem.text()));
                screen.err().println(caseFile + " cannot be used: " + Inputs.counts(faulty.problems()));
                yield Exit.INPUT;
            }
            case FindQuestion.Answer.Found found -> {
                if (json) {
                    screen.out().print(FindJson.write(found.asked(), found.diagnosis()));
                } else {
                    print(found);
                }
                yield Exit.DONE;
            }
        };
    }

    private void print(FindQuestion.Answer.Found found) {
        found.asked().remarks().stream()
                .filter(problem -> problem.severity() != Severity.FAULT)
                .forEach(problem -> screen.err().println(problem.text()));
        for (Posterior.Belief belief : found.diagnosis().leading(MOST_SHOWN, SHOWN)) {
            screen.out()
                    .println(String.format(
                            Locale.ROOT,
                            "%5.1f %%  %s, %s",
                            belief.chance() * 100,
                            belief.fault().words().name(),
                            belief.where().label()));
        }
    }
}
