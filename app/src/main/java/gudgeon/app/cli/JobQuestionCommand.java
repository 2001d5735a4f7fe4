package gudgeon.app.cli;

import gudgeon.app.desk.ClosingUp;
import gudgeon.app.desk.Gauges;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.JobList;
import gudgeon.app.desk.JobOrder;
import gudgeon.app.desk.MeasuringList;
import gudgeon.app.desk.StripQuestion.Reply;
import gudgeon.app.desk.LayOut;
import gudgeon.app.desk.Toolbox;
import gudgeon.app.desk.Workshop;
import gudgeon.app.format.PlainJson;
import gudgeon.app.format.StripJson;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** One question about a job. */
@Command(
        mixinStandardHelpOptions = true,
        sortOptions = false,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done",
            "1:There is no such job",
            "2:Wrong usage",
            "3:There is no plan, or the ledgers do not balance; the answer says why",
            "4:The program or the machine failed"
        })
final class JobQuestionCommand implements Callable<Integer> {
    private static final int NOT_SAID = -1;

    private final Screen screen;
    private final JobQuestion question;

    @Mixin
    private JobOptions options = new JobOptions();

    @Option(
            names = "--pdf",
            paramLabel = "FILE",
            defaultValue = "",
            description = "plan, build, order: write the sheet to print, as the job stands; places: labels for the bags;"
                    + " measure: the sheet to fill by hand.")
    private String pdf = "";

    @Option(
            names = "--csv",
            paramLabel = "FILE",
            defaultValue = "",
            description = "order, book, measure: write it for a spreadsheet; - for the screen.")
    private String csv = "";

    @Option(
            names = "--minutes",
            paramLabel = "N",
            defaultValue = "-1",
            description = "tools: what to lay out for so many minutes; " + LayOut.USUAL_MINUTES + " when not said.")
    private int minutes = NOT_SAID;

    JobQuestionCommand(Screen screen, JobQuestion question) {
        this.screen = screen;
        this.question = question;
    }

    @Override
    public Integer call() {
        JobRun run = new JobRun(screen, options);
        if (minutes != NOT_SAID && question != JobQuestion.TOOLS) {
            throw options.wrong("--minutes is for tools. Maybe: gudgeon job tools --minutes " + minutes + "?");
        }
        if (minutes != NOT_SAID && (minutes < LayOut.SHORTEST || minutes > LayOut.LONGEST)) {
            throw options.wrong("--minutes is " + LayOut.SHORTEST + " to " + LayOut.LONGEST + ", not " + minutes + ".");
        }
        if (!pdf.isEmpty() || !csv.isEmpty()) {
            return new JobPaperRun(screen, options, question).write(pdf, csv);
        }
        return question == JobQuestion.LIST ? run.inWorkshop(this::list) : run.onJob(this::answer);
    }

    private int list(Workshop workshop) {
        var lines = JobList.of(workshop);
        if (options.json()) {
            screen.out().print(PlainJson.text(lines.stream().map(JobJson::line).toList()));
        } else if (lines.isEmpty()) {
            screen.out().println("There is no job yet. Maybe: gudgeon job new wren-160 --reach head");
        } else {
            lines.forEach(line -> new JobText(screen, line.job()).where());
        }
        return Exit.DONE;
    }

    private int answer(Workshop workshop, Job job) {
        JobAnswers answers = new JobAnswers(screen, job, options.json());
        return switch (question) {
            case LIST -> list(workshop);
            case SHOW -> answers.show();
            case PLAN -> plan(job);
            case BUILD -> answers.build();
            case ORDER -> answers.order(JobOrder.of(job), LayOut.lacking(job, Toolbox.of(workshop, job)));
            case TOOLS -> answers.tools(
                    Toolbox.of(workshop, job), minutes == NOT_SAID ? LayOut.USUAL_MINUTES : minutes);
            case MEASURE -> answers.measure(MeasuringList.of(job, Gauges.of(workshop, job)));
            case PLACES -> answers.places();
            case LEDGER -> answers.ledger(ClosingUp.of(job));
            case CLOSE -> close(workshop, job, answers);
            case BOOK -> answers.book();
            case ENGINE -> answers.engine();
        };
    }

    private int plan(Job job) {
        if (job.facts().setting().target().isEmpty()) {
            screen.err().println("gudgeon: nothing is to be reached yet. Maybe: gudgeon tell \"target set\" off=PART?");
            return Exit.INPUT;
        }
        return switch (job.strip()) {
            case Reply.Planned planned -> {
                if (options.json()) {
                    screen.out().print(StripJson.write(planned.engine(), planned.request(), planned.plan()));
                } else {
                    new StripText(screen, false).print(planned);
                }
                yield Exit.DONE;
            }
            case Reply.Stuck stuck -> {
                if (options.json()) {
                    screen.out().print(StripJson.write(stuck.engine(), stuck.request(), stuck.blocked()));
                } else {
                    new BlockedText(screen).print(stuck);
                }
                yield Exit.BLOCKED;
            }
            case Reply.Unknown unknown -> Exit.INPUT;
        };
    }

    private int close(Workshop workshop, Job job, JobAnswers answers) {
        ClosingUp ledgers = ClosingUp.of(job);
        if (!ledgers.isBalanced()) {
            return answers.ledger(ledgers);
        }
        JobRun run = new JobRun(screen, options);
        return run.told(workshop.note(job, new ClosingUp.Close(""), run.who(), Optional.empty()));
    }
}
