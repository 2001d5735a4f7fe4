package gudgeon.app.web.jobs;

import gudgeon.app.desk.Job;
import gudgeon.app.desk.JobPhotos;
import gudgeon.app.desk.Remembered;
import gudgeon.app.document.EntryWords;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.core.book.Ref;
import gudgeon.core.planning.BuildPlan;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/**
 * How something was before it came off, as the person wrote it down and photographed it: shown at the strip, and again when it
 * goes back.
 *
 * @param lines how things run, what differs from the file, where each fastener sat, notes
 */
public record HowItWas(List<String> lines, List<Shot> shots) {
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("d MMM, HH:mm", Locale.UK);

    public HowItWas {
        lines = List.copyOf(lines);
        shots = List.copyOf(shots);
    }

    /**
     * A photo.
     *
     * @param src where it is loaded from
     * @param text its caption, or what it is about
     * @param when day and time
     */
    public record Shot(String src, String text, String when) {}

    public boolean empty() {
        return lines.isEmpty() && shots.isEmpty();
    }

    /** A joint, with what bends in it. */
    public static HowItWas joint(Job job, String id) {
        return of(job, Remembered.joint(job, id));
    }

    /** Parts, as one piece. */
    public static HowItWas parts(Job job, List<String> ids) {
        return of(job, Remembered.parts(job, ids));
    }

    /** What is of use at a step of the way back. */
    public static HowItWas step(Job job, BuildPlan.Operation step) {
        return of(job, Remembered.step(job, step));
    }

    private static HowItWas of(Job job, Remembered remembered) {
        return new HowItWas(lines(remembered), shots(job, remembered.photos()));
    }

    /** Its words, one line each. */
    public static List<String> lines(Remembered remembered) {
        return EntryWords.remembered(remembered.pieces(), remembered.words());
    }

    private static List<Shot> shots(Job job, List<JobPhotos.Shot> shots) {
        return shots.stream().map(shot -> shot(job, shot)).toList();
    }

    /** One photo, as pages show it. */
    public static Shot shot(Job job, JobPhotos.Shot shot) {
        Names names = new Names(job.engine());
        String about = Figures.list(shot.entry().about().stream()
                .map(Ref::id)
                .map(names::any)
                .toList());
        String caption = shot.photo().caption();
        String text = caption.isEmpty() ? about.isEmpty() ? "Photo" : Names.capital(about) : caption;
        return new Shot(
                JobPaths.photo(job, shot.photo().sha256()), text, WHEN.format(shot.entry().stamp().at()));
    }
}
