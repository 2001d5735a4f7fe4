package gudgeon.app.web.photos;

import gudgeon.app.desk.Job;
import gudgeon.app.desk.JobPhotos;
import gudgeon.app.desk.PhotoTaken;
import gudgeon.app.desk.Things;
import gudgeon.app.desk.Who;
import gudgeon.app.desk.Workshop;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.app.store.EntryStore;
import gudgeon.app.web.jobs.HowItWas;
import gudgeon.app.web.jobs.JobDesk;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.page.Form;
import gudgeon.app.web.page.Gate;
import gudgeon.app.web.page.Pages;
import gudgeon.app.web.page.Refusal;
import gudgeon.app.web.page.Sheet;
import gudgeon.core.book.Ref;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Takes a photo of a part or a joint into the book, and serves those that are there. */
public final class PhotoPages {
    /** Room for the rest of the form beside the picture. */
    private static final int BESIDE = 64 * 1024;

    private static final Pattern UPLOAD = Pattern.compile("/jobs/[^/]+/photo/?");

    private final JobDesk desk;
    private final Pages pages;

    public PhotoPages(JobDesk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    /** Most bytes that may be sent to a path: a picture to the one that takes it, a form to every other. */
    public static int mostBytes(String path) {
        return UPLOAD.matcher(path).matches() ? PhotoTaken.MOST_BYTES + BESIDE : Gate.MOST_BYTES;
    }

    /** Puts the pages under their paths. */
    public void route(RoutesConfig routes) {
        routes.get("/jobs/{job}/photo", this::ask);
        routes.post("/jobs/{job}/photo", this::take);
        routes.get("/jobs/{job}/photos/{sha256}", this::picture);
    }

    private void ask(Context request) {
        Form form = Form.empty();
        for (String field : List.of("about", "back")) {
            form.with(field, Optional.ofNullable(request.queryParam(field)).orElse(""));
        }
        show(request, desk.job(request), form);
    }

    private void show(Context request, Job job, Form form) {
        List<Ref> about = about(job, form);
        Names names = new Names(job.engine());
        String subject = Names.capital(
                Figures.list(about.stream().map(Ref::id).map(names::any).toList(), 3));
        String entry = form.typed(Form.ENTRY).isEmpty() ? desk.newEntry() : form.typed(Form.ENTRY);
        PhotoView view = new PhotoView(
                form, entry, subject, JobPaths.job(job) + "/photo", JobPaths.back(job, form.typed("back")), was(job, about));
        Sheet sheet = desk.sheet(job, "Photo", Sheet.Stage.NONE).forBench();
        if (form.sound()) {
            pages.show(request, "photos/photo.jte", sheet, view);
        } else {
            pages.showRefused(request, "photos/photo.jte", sheet, view);
        }
    }

    private static HowItWas was(Job job, List<Ref> about) {
        List<String> ids = about.stream().map(Ref::id).toList();
        return about.size() == 1 && about.getFirst().sort() == Ref.Sort.JOINT
                ? HowItWas.joint(job, ids.getFirst())
                : HowItWas.parts(job, ids);
    }

    /** The form names them parted by commas; what the engine does not have is left out. */
    private static List<Ref> about(Job job, Form form) {
        return Things.known(job, Stream.of(form.typed("about").split(",", -1)).toList());
    }

    private void take(Context request) {
        Job job = desk.job(request);
        Form form = Form.of(request);
        String caption = form.optionalLine("caption", "the caption");
        List<UploadedFile> sent = request.uploadedFiles("photo").stream()
                .filter(file -> file.size() > 0)
                .toList();
        if (sent.isEmpty()) {
            form.refuse("photo", "Take a photo, or choose one.");
        } else if (sent.size() > 1) {
            form.refuse("photo", "Two photos came at once, and neither is kept: send one, then the other.");
        }
        if (form.sound()) {
            Workshop.Noted noted = PhotoTaken.whole(bytes(sent.getFirst()), caption, about(job, form))
                    .note(desk.workshop(), job, Who.SOMEBODY, Optional.of(form.entry()));
            if (desk.kept(noted, form, "The photo is in the book.")) {
                Pages.goTo(request, JobPaths.saying(JobPaths.back(job, form.typed("back")), form.entry()));
                return;
            }
        }
        show(request, job, form);
    }

    private static byte[] bytes(UploadedFile file) {
        try (InputStream in = file.content()) {
            return in.readNBytes(PhotoTaken.MOST_BYTES + 1);
        } catch (IOException e) {
            throw new UncheckedIOException("what was sent broke off", e);
        }
    }

    private void picture(Context request) {
        Job job = desk.job(request);
        EntryStore.Photo photo = JobPhotos.find(desk.workshop(), job, request.pathParam("sha256"))
                .orElseThrow(() -> Refusal.missing("There is no such photo in this book.", "The book shows all photos."));
        request.header("Cache-Control", "private, max-age=31536000, immutable");
        request.contentType(photo.type());
        request.disableCompression();
        request.result(photo.bytes());
    }
}
