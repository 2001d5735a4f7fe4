package gudgeon.app.web.history;

import gudgeon.app.desk.Deed;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.JobPhotos;
import gudgeon.app.desk.Withdraw;
import gudgeon.app.document.EntryWords;
import gudgeon.app.web.jobs.HowItWas;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.core.book.Build;
import gudgeon.core.book.Entry;
import gudgeon.core.book.Fault;
import gudgeon.core.book.Fluid;
import gudgeon.core.book.JobState;
import gudgeon.core.book.Keeping;
import gudgeon.core.book.Setup;
import gudgeon.core.book.Strip;
import gudgeon.core.book.Word;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What the book shows. */
public final class HistoryView {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.UK);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.UK);

    private final Job job;
    private final EntryWords words;
    private final Form form;
    private final String entry;
    private final SaidView said;

    HistoryView(Job job, Form form, String entry, SaidView said) {
        this.job = job;
        this.words = new EntryWords(job.engine());
        this.form = form;
        this.entry = entry;
        this.said = said;
    }

    /**
     * One entry.
     *
     * @param sort what it is about, one word
     * @param counts whether it counts; withdrawn ones are struck through
     * @param back where it can be taken back; empty when it cannot
     * @param shots the photo, when it is one that counts
     */
    public record Line(
            long number, String time, String sort, String text, boolean counts, String back, List<HowItWas.Shot> shots) {
        public Line {
            shots = List.copyOf(shots);
        }
    }

    /** The entries of one day. */
    public record Day(String date, List<Line> lines) {
        public Day {
            lines = List.copyOf(lines);
        }
    }

    public Form form() {
        return form;
    }

    public String entry() {
        return entry;
    }

    public SaidView said() {
        return said;
    }

    public String path() {
        return JobPaths.job(job) + "/book";
    }

    public int count() {
        return job.state().history().size();
    }

    public int withdrawn() {
        return (int)
                job.state().history().stream().filter(told -> !told.counts()).count();
    }

    public List<Day> days() {
        List<Day> days = new ArrayList<>();
        List<Line> lines = new ArrayList<>();
        String day = "";
        for (JobState.Told told : job.state().history()) {
            String date = DAY.format(told.entry().stamp().at());
            if (!date.equals(day) && !lines.isEmpty()) {
                days.add(new Day(day, lines));
                lines = new ArrayList<>();
            }
            day = date;
            lines.add(line(told));
        }
        if (!lines.isEmpty()) {
            days.add(new Day(day, lines));
        }
        return days;
    }

    private Line line(JobState.Told told) {
        Entry one = told.entry();
        return new Line(
                one.seq(),
                TIME.format(one.stamp().at()),
                sort(one),
                words.of(one),
                told.counts(),
                back(told) ? path() + "/entry?id=" + one.id() : "",
                shots(told));
    }

    private List<HowItWas.Shot> shots(JobState.Told told) {
        return told.counts() && told.entry().body() instanceof Word.Photo photo
                ? List.of(HowItWas.shot(job, new JobPhotos.Shot(told.entry(), photo)))
                : List.of();
    }

    /** Whether the desk would take it back; withdrawals are taken back by undoing them on the bench. */
    private boolean back(JobState.Told told) {
        return told.counts() && new Withdraw(told.entry().id(), "").tell(job) instanceof Deed.Telling.Facts;
    }

    private static String sort(Entry entry) {
        return switch (entry.body()) {
            case Setup setup -> "job";
            case Strip strip -> "strip";
            case Fault fault -> "trouble";
            case Keeping keeping -> "keeping";
            case Fluid fluid -> "fluid";
            case Build build -> "build";
            case gudgeon.core.book.Gauging gauging -> "measured";
            case Word word -> "word";
        };
    }

    /** The entry that is to be taken back. */
    public Optional<Line> asked() {
        return Form.findId(form.typed("withdraw"))
                .flatMap(id -> job.state().history().stream()
                        .filter(told -> told.entry().id().equals(id))
                        .map(this::line)
                        .findFirst());
    }

    public Line line() {
        return asked().orElseThrow();
    }
}
