package gudgeon.app.cli;

import gudgeon.app.desk.EngineQuestion;
import gudgeon.app.format.Problem;
import gudgeon.app.format.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Every fault of engine files, all at once. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        header = "Lists every fault of engine files, with its place and what would be right.",
        description = "One line for each fault: file:line:column: what is wrong; what would be right.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:Every file can be used", "1:At least one has faults", "2:Wrong usage"},
        footer = {"", "Example: gudgeon check my-engine.yaml"})
final class CheckCommand implements Callable<Integer> {
    private final Screen screen;

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "Engine files, or names of shipped engines.")
    private List<String> files = new ArrayList<>();

    CheckCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        int exit = Exit.DONE;
        for (String file : files) {
            switch (new EngineQuestion(file).ask()) {
                case Reading.Sound sound -> {
                    tell(sound.remarks());
                    screen.out().println(file + ": good: " + counts(sound) + ", " + Inputs.counts(sound.remarks()));
                }
                case Reading.Faulty faulty -> {
                    tell(faulty.problems());
                    screen.out().println(file + ": not good: " + Inputs.counts(faulty.problems()));
                    exit = Exit.INPUT;
                }
            }
        }
        return exit;
    }

    private void tell(List<Problem> problems) {
        problems.forEach(problem -> screen.out().println(problem.text()));
    }

    private static String counts(Reading.Sound sound) {
        return sound.engine().parts().size() + " parts, " + sound.engine().joints().size() + " joints";
    }
}
