package gudgeon.app.web.jobs;

import gudgeon.app.desk.Job;
import gudgeon.app.desk.JobPhotos;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.core.book.Facts;
import gudgeon.core.book.Ref;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * How something was before it came off, as the person wrote it down and photographed it: shown at the strip, and again when it
 * goes back.
 *
 * @param lines how things run, what differs from the file
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
        List<String> lines = new ArrayList<>();
        Facts.FoundJoint found = job.facts().findings().joints().get(id);
        if (found != null && !found.differs().isEmpty()) {
            lines.add(found.differs());
        }
        Set<String> ids = new LinkedHashSet<>();
        ids.add(id);
        job.engine().findJoint(id).ifPresent(joint -> ids.addAll(bending(job.engine(), joint)));
        lines.addAll(runs(job, ids));
        return new HowItWas(lines, shots(job, JobPhotos.about(job, ids)));
    }

    /** Parts, as one piece. */
    public static HowItWas parts(Job job, List<String> ids) {
        return new HowItWas(runs(job, ids), shots(job, JobPhotos.about(job, ids)));
    }

    private static List<String> bending(Engine engine, Joint joint) {
        return joint.flexible() ? List.of(joint.between().getFirst()) : List.of();
    }

    private static List<String> runs(Job job, Iterable<String> ids) {
        List<String> lines = new ArrayList<>();
        for (String id : ids) {
            lines.addAll(job.facts().findings().routings().getOrDefault(id, List.of()));
        }
        return lines;
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
