package gudgeon.app.web.jobs;

import gudgeon.app.desk.Deed;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.Say;
import gudgeon.app.desk.UndoLast;
import gudgeon.app.document.EntryWords;
import gudgeon.app.web.page.Form;
import gudgeon.app.web.page.Pages;
import gudgeon.app.web.page.Refusal;
import gudgeon.app.web.page.Sheet;
import gudgeon.core.book.Entry;
import gudgeon.core.book.Ref;
import gudgeon.core.book.Word;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;

/** A note into the book, and the last stroke taken back: both large enough for the bench. */
public final class NotePages {
    private final JobDesk desk;
    private final Pages pages;

    public NotePages(JobDesk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    /**
     * @param about id of the joint or part that the note is about; empty for the job as a whole
     * @param subject its name
     * @param back path to come back to
     * @param photo where a photo is taken instead
     */
    public record Note(Form form, String entry, String about, String subject, String path, String back, String photo) {}

    /** What would be taken back. */
    public record Undo(List<String> lines, String entry, String path, String back) {
        public Undo {
            lines = List.copyOf(lines);
        }
    }

    /** Puts the pages under their paths. */
    public void route(RoutesConfig routes) {
        routes.get("/jobs/{job}/note", this::ask);
        routes.post("/jobs/{job}/note", this::write);
        routes.get("/jobs/{job}/undo", this::last);
        routes.post("/jobs/{job}/undo", this::undo);
    }

    private void ask(Context request) {
        Job job = desk.job(request);
        String about = Optional.ofNullable(request.queryParam("about")).orElse("");
        show(request, job, Form.empty().with("about", about).with("back", asked(request)));
    }

    /** The path to come back to that an address names; may be empty. */
    private static String asked(Context request) {
        return Optional.ofNullable(request.queryParam("back")).orElse("");
    }

    private void show(Context request, Job job, Form form) {
        String about = form.typed("about");
        String entry = form.typed(Form.ENTRY).isEmpty() ? desk.newEntry() : form.typed(Form.ENTRY);
        String back = JobPaths.back(job, form.typed("back"));
        Note view = new Note(
                form,
                entry,
                about,
                subject(job, about),
                JobPaths.job(job) + "/note",
                back,
                JobPaths.photo(job, about, back));
        Sheet sheet = desk.sheet(job, "Note", Sheet.Stage.STRIP).forBench();
        if (form.sound()) {
            pages.show(request, "jobs/note.jte", sheet, view);
        } else {
            pages.showRefused(request, "jobs/note.jte", sheet, view);
        }
    }

    private void write(Context request) {
        Job job = desk.job(request);
        Form form = Form.of(request);
        String text = form.text("text", "the note");
        if (text.isEmpty()) {
            form.refuse("text", "Something is needed here.");
        }
        if (form.sound()) {
            Deed deed = new Say(new Word.Note(text), ref(job, form.typed("about")));
            if (desk.write(job, deed, form, "Noted.")) {
                Pages.goTo(request, JobPaths.saying(JobPaths.back(job, form.typed("back")), form.entry()));
                return;
            }
        }
        show(request, job, form);
    }

    private static String subject(Job job, String about) {
        return job.engine()
                .findJoint(about)
                .map(joint -> joint.name())
                .or(() -> job.engine().findPart(about).map(part -> part.name()))
                .or(() -> job.engine().findReady(about).map(ready -> ready.name()))
                .orElse("");
    }

    private static List<Ref> ref(Job job, String about) {
        if (job.engine().findJoint(about).isPresent()) {
            return List.of(Ref.joint(about));
        }
        if (job.engine().findPart(about).isPresent()) {
            return List.of(Ref.part(about));
        }
        return job.engine().findReady(about).isPresent() ? List.of(new Ref(Ref.Sort.READY, about)) : List.of();
    }

    private void last(Context request) {
        Job job = desk.job(request);
        EntryWords words = new EntryWords(job.engine());
        List<String> lines = UndoLast.lastStroke(job).stream().map(entry -> line(words, entry)).toList();
        String back = JobPaths.back(job, asked(request));
        Undo view = new Undo(lines, desk.newEntry(), JobPaths.job(job) + "/undo", back);
        pages.show(request, "jobs/undo.jte", desk.sheet(job, "Undo last", Sheet.Stage.STRIP).forBench(), view);
    }

    private static String line(EntryWords words, Entry entry) {
        return words.of(entry);
    }

    private void undo(Context request) {
        Job job = desk.job(request);
        Form form = Form.of(request);
        if (!desk.write(job, new UndoLast(), form, "Taken back; it stays in the book, struck through.")) {
            throw new Refusal(422, "There is nothing to take back.", "");
        }
        Pages.goTo(request, JobPaths.saying(JobPaths.back(job, form.typed("back")), form.entry()));
    }
}
