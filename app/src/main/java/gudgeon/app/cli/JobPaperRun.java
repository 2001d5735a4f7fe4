package gudgeon.app.cli;

import gudgeon.app.desk.Gauges;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.JobPapers;
import gudgeon.app.document.ReadingsCsv;
import java.util.Optional;
import java.util.function.Supplier;

/** Writes the papers of a job, as it stands now. */
final class JobPaperRun {
    private final Screen screen;
    private final JobOptions options;
    private final JobQuestion question;

    JobPaperRun(Screen screen, JobOptions options, JobQuestion question) {
        this.screen = screen;
        this.options = options;
        this.question = question;
    }

    /** Writes what was asked for. @param pdf file, or empty; @param csv file, "-" for the screen, or empty */
    int write(String pdf, String csv) {
        boolean sheet = switch (question) {
            case PLAN, BUILD, ORDER, PLACES, MEASURE -> true;
            default -> false;
        };
        boolean table = question == JobQuestion.ORDER
                || question == JobQuestion.BOOK
                || question == JobQuestion.MEASURE;
        if (!pdf.isEmpty() && !sheet) {
            throw options.wrong("--pdf is for plan, build, order, places, measure. Maybe: gudgeon job plan --pdf FILE?");
        }
        if (!csv.isEmpty() && !table) {
            throw options.wrong("--csv is for order, book, measure. Maybe: gudgeon job book --csv FILE?");
        }
        if (options.json()) {
            throw options.wrong("--json answers on the screen; --pdf and --csv write a file. Maybe one after the other?");
        }
        return new JobRun(screen, options).onJob((workshop, job) -> written(job, Gauges.of(workshop, job), pdf, csv));
    }

    private int written(Job job, Gauges gauges, String pdf, String csv) {
        JobPapers papers = new JobPapers(job, Papers.issue().date());
        if (!csv.isEmpty()) {
            Supplier<String> text =
                    switch (question) {
                        case BOOK -> papers::bookCsv;
                        case MEASURE -> () -> ReadingsCsv.of(job.facts().gauged().readings());
                        default -> papers::orderCsv;
                    };
            new Papers(screen).writeText(csv, text);
        }
        if (pdf.isEmpty()) {
            return Exit.DONE;
        }
        Optional<byte[]> sheet = Waiting.on(screen, "writing " + pdf, () -> sheet(papers, gauges));
        if (sheet.isEmpty()) {
            screen.err().println("gudgeon: " + nothing());
            return Exit.INPUT;
        }
        new Papers(screen).write(pdf, sheet::get);
        return Exit.DONE;
    }

    private Optional<byte[]> sheet(JobPapers papers, Gauges gauges) {
        return switch (question) {
            case PLAN -> papers.stripCard();
            case BUILD -> papers.buildSheet();
            case PLACES -> papers.labelSheet();
            case MEASURE -> Optional.of(papers.measuringSheet(gauges));
            default -> Optional.of(papers.orderSheet());
        };
    }

    private String nothing() {
        return switch (question) {
            case PLAN -> "nothing is left to undo, or there is no plan: gudgeon job plan tells. Nothing was written.";
            case BUILD -> "nothing was undone, so there is no way back yet. Nothing was written.";
            default -> "there is no bag and none to come. Nothing was written.";
        };
    }
}
