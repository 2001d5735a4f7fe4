package gudgeon.app.web.trouble;

import gudgeon.app.desk.Job;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.app.web.engines.EnginePaths;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.JointChoice;
import gudgeon.app.web.page.Form;
import gudgeon.app.web.picture.HolePicture;
import gudgeon.core.book.Facts;
import gudgeon.core.book.Fault;
import gudgeon.core.engine.Joint;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What the page shows that asks what is the matter: the joint, its fasteners, the sorts of trouble. */
public final class TroubleView {
    private final Job job;
    private final Optional<Joint> joint;
    private final Form form;
    private final String entry;

    TroubleView(Job job, String id, Form form, String entry) {
        this.job = job;
        this.joint = JointChoice.find(job, id);
        this.form = form;
        this.entry = entry;
    }

    /** A sort of trouble. */
    public record Sort(String id, String name, String about) {}

    /** A trouble that is not solved yet. */
    public record Open(String path, String text) {}

    public boolean chosen() {
        return joint.isPresent();
    }

    public JointChoice choice() {
        return new JointChoice(job);
    }

    public Form form() {
        return form;
    }

    public String entry() {
        return entry;
    }

    public String path() {
        return JobPaths.job(job) + "/trouble";
    }

    public String bench() {
        return JobPaths.bench(job);
    }

    public String id() {
        return joint.map(Joint::id).orElse("");
    }

    public String name() {
        return joint.map(Joint::name).orElse("");
    }

    /** The sorts of trouble in the words of the trade. */
    public List<Sort> sorts() {
        return Arrays.stream(Fault.Kind.values())
                .map(kind -> new Sort(kind.name(), word(kind), about(kind)))
                .toList();
    }

    static String word(Fault.Kind kind) {
        return switch (kind) {
            case SEIZED -> "Seized";
            case ROUNDED -> "Rounded";
            case SNAPPED -> "Snapped";
            case STRIPPED -> "Stripped";
            case MISSING -> "Missing";
        };
    }

    private static String about(Fault.Kind kind) {
        return switch (kind) {
            case SEIZED -> "it does not turn";
            case ROUNDED -> "the spanner slips";
            case SNAPPED -> "the head is off, the rest is in";
            case STRIPPED -> "it turns and does not come";
            case MISSING -> "it is not there";
        };
    }

    /** How many fasteners the joint has by the file. */
    public List<Integer> fasteners() {
        int count = joint.map(one -> one.makeup().fasteners().size()).orElse(0);
        return IntStream.rangeClosed(1, count).boxed().toList();
    }

    /** Where they sit, by their numbers; empty when the file does not say. */
    public HolePicture picture() {
        return joint.map(one -> HolePicture.of(one, HolePicture.Sign::plain)).orElse(HolePicture.NONE);
    }

    /** Troubles that are not solved. */
    public List<Open> open() {
        return job.facts().findings().troubles().stream()
                .filter(trouble -> !trouble.solved())
                .map(this::line)
                .toList();
    }

    private Open line(Facts.TroubleSoFar trouble) {
        String id = trouble.trouble().joint();
        String tried = trouble.tried().isEmpty()
                ? "nothing tried yet"
                : Figures.count(trouble.tried().size(), "thing") + " tried";
        return new Open(
                path() + "/ladder?joint=" + EnginePaths.encoded(id),
                word(trouble.trouble().kind()) + ": " + new Names(job.engine()).any(id) + ", " + tried);
    }
}
