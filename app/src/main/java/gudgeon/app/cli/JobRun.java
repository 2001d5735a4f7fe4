package gudgeon.app.cli;

import gudgeon.app.desk.Deed;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.JobList;
import gudgeon.app.desk.Who;
import gudgeon.app.desk.Workshop;
import gudgeon.app.desk.Workshop.Noted;
import gudgeon.app.format.PlainJson;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntBiFunction;
import java.util.function.ToIntFunction;

/** From the options of a command to its job: opens the store, finds the job, runs, closes. */
final class JobRun {
    private final Screen screen;
    private final JobOptions options;

    JobRun(Screen screen, JobOptions options) {
        this.screen = screen;
        this.options = options;
    }

    /** Runs on the whole workshop. */
    int inWorkshop(ToIntFunction<Workshop> then) {
        try (Workshop workshop = Workshop.open(options.store())) {
            return then.applyAsInt(workshop);
        }
    }

    /** Runs on the one job that is meant; without one, tells why. */
    int onJob(ToIntBiFunction<Workshop, Job> then) {
        return inWorkshop(workshop -> {
            List<String> ids = workshop.jobIds();
            List<String> meant = ids.contains(options.job())
                    ? List.of(options.job())
                    : ids.stream().filter(id -> id.startsWith(options.job())).toList();
            if (meant.size() == 1) {
                return then.applyAsInt(
                        workshop, workshop.findJob(meant.getFirst()).orElseThrow());
            }
            if (ids.isEmpty()) {
                screen.err().println("gudgeon: there is no job yet. Maybe: gudgeon job new wren-160 --reach head?");
            } else if (meant.isEmpty()) {
                screen.err()
                        .println("gudgeon: no job is called '" + options.job() + "'. There are: "
                                + String.join(", ", ids));
            } else {
                screen.err().println("gudgeon: which job? Maybe --job " + String.join(", or --job ", meant) + "?");
            }
            return Exit.INPUT;
        });
    }

    /** Says a deed, and tells what came of it. */
    int say(Deed deed) {
        return onJob((workshop, job) -> told(workshop.note(job, deed, who(), Optional.empty())));
    }

    Who who() {
        return new Who(options.by(), "command line", "");
    }

    /** Tells what came of a deed. */
    int told(Noted noted) {
        return switch (noted) {
            case Noted.Refused refused -> {
                refused.problems().forEach(problem -> screen.err().println("gudgeon: " + FieldText.of(problem)));
                yield Exit.INPUT;
            }
            case Noted.Done done -> {
                if (options.json()) {
                    screen.out().print(PlainJson.text(json(done)));
                } else {
                    new JobText(screen, done.job()).noted(done);
                }
                yield Exit.DONE;
            }
        };
    }

    private static Map<String, Object> json(Noted.Done done) {
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("job", done.job().id());
        answer.put("entries", done.entries().stream().map(JobJson::entry).toList());
        answer.put("change", JobJson.change(done.change()));
        answer.put("state", JobJson.line(JobList.line(done.job())));
        return answer;
    }
}
