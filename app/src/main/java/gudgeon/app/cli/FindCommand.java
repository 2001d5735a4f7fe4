package gudgeon.app.cli;

import gudgeon.app.desk.FindQuestion;
import gudgeon.app.format.FindJson;
import gudgeon.app.format.Severity;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What is wrong, how sure, which test next, how deep. */
@Command(
        name = "find",
        mixinStandardHelpOptions = true,
        header = "Says what is most likely wrong, from what was seen and measured.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:Done", "1:The case has faults", "2:Wrong usage"},
        footer = {"", "Example: gudgeon find --case rough-idle.yaml", "Example: gudgeon find dunlin-22d --readings hard-start.yaml"})
final class FindCommand implements Callable<Integer> {
    private final Screen screen;

    @Parameters(
            paramLabel = "FILE",
            arity = "0..1",
            description = "An engine file, or the name of a shipped engine; with --readings.")
    private String file = "";

    @Option(names = "--case", paramLabel = "CASE", description = "A case: engine facts and readings.")
    private String caseFile = "";

    @Option(
            names = "--readings",
            paramLabel = "READINGS",
            description = "What was seen and measured on the engine of FILE (docs/finding.md).")
    private String readings = "";

    @Option(names = "--json", description = "Answer as JSON (docs/json.md), and print nothing else.")
    private boolean json;

    FindCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        boolean ofEngine = !file.isEmpty() && !readings.isEmpty() && caseFile.isEmpty();
        if (!ofEngine && (caseFile.isEmpty() || !file.isEmpty() || !readings.isEmpty())) {
            screen.err().println("gudgeon: name a case with --case, or an engine file and --readings");
            return Exit.USAGE;
        }
        String asked = ofEngine ? readings : caseFile;
        return switch (new FindQuestion(file, asked).ask()) {
            case FindQuestion.Answer.Faulty faulty -> {
                faulty.problems().forEach(problem -> screen.err().println(problem.text()));
                screen.err().println(asked + " cannot be used: " + Inputs.counts(faulty.problems()));
                yield Exit.INPUT;
            }
            case FindQuestion.Answer.Found found -> {
                if (json) {
                    screen.out().print(FindJson.write(found.asked(), found.diagnosis(), found.next()));
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
        new FindText(screen).print(found);
    }
}
