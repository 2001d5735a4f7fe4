package gudgeon.app.web.found;

import gudgeon.app.desk.Job;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.app.document.StepWords;
import gudgeon.app.web.engines.EnginePaths;
import gudgeon.app.web.engines.EngineView;
import gudgeon.app.web.jobs.HowItWas;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.JointChoice;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.core.book.Facts;
import gudgeon.core.book.Strip;
import gudgeon.core.engine.Joint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What the page of a joint as found shows: by the file, as written down so far, the form. */
public final class FoundView {
    private static final double HEAVY = 3;

    private final Job job;
    private final Optional<Joint> joint;
    private final Form form;
    private final String entry;
    private final String second;
    private final SaidView said;
    private final Names names;

    /**
     * @param id of the joint; the page lets one choose when it is none
     * @param second names the entry that the form on how it runs makes
     */
    FoundView(Job job, String id, Form form, String entry, String second, SaidView said) {
        this.job = job;
        this.joint = JointChoice.find(job, id);
        this.form = form;
        this.entry = entry;
        this.second = second;
        this.said = said;
        this.names = new Names(job.engine());
    }

    /** A flexible part of the joint, and how it runs as far as is written down. */
    public record Runs(String id, String name, List<String> known) {
        public Runs {
            known = List.copyOf(known);
        }
    }

    public boolean chosen() {
        return joint.isPresent();
    }

    public JointChoice choice() {
        return new JointChoice(job);
    }

    public SaidView said() {
        return said;
    }

    public Form form() {
        return form;
    }

    public String entry() {
        return entry;
    }

    public String second() {
        return second;
    }

    public String path() {
        return JobPaths.job(job) + "/found";
    }

    public String bench() {
        return JobPaths.bench(job);
    }

    public String jobPath() {
        return JobPaths.job(job);
    }

    public String id() {
        return joint.map(Joint::id).orElse("");
    }

    public String name() {
        return joint.map(Joint::name).orElse("");
    }

    /** Where a photo of it is taken. */
    public String photo() {
        return JobPaths.photo(job, id(), path() + "?joint=" + EnginePaths.encoded(id()));
    }

    /** The same for a part that bends. */
    public String photo(Runs runs) {
        return JobPaths.photo(job, runs.id(), path() + "?joint=" + EnginePaths.encoded(id()));
    }

    /** Photos of it so far; its words stand in the rows. */
    public HowItWas was() {
        return new HowItWas(List.of(), HowItWas.joint(job, id()).shots());
    }

    public String trouble() {
        return JobPaths.job(job) + "/trouble?joint=" + EnginePaths.encoded(id());
    }

    public String correct() {
        return JobPaths.job(job) + "/engine/joint?joint=" + EnginePaths.encoded(id());
    }

    /** What the file says of it. */
    public List<String> byFile() {
        List<String> fasteners = joint.map(StepWords::fasteners).orElse(List.of());
        return fasteners.isEmpty() ? List.of("no fasteners of its own") : fasteners;
    }

    private Optional<Facts.FoundJoint> found() {
        return Optional.ofNullable(job.facts().findings().joints().get(id()));
    }

    public boolean counted() {
        return found().isPresent();
    }

    /** As it was found so far. */
    public List<EngineView.Row> rows() {
        List<EngineView.Row> rows = new ArrayList<>();
        found().ifPresent(found -> {
            List<String> counts = found.counts().stream().map(String::valueOf).toList();
            rows.add(new EngineView.Row(
                    counts.size() > 1 ? "Counted, the last holds" : "Counted", String.join(", then ", counts)));
            found.pieces().forEach(piece -> rows.add(new EngineView.Row("Measured", piece(piece))));
            if (!found.bag().isEmpty()) {
                rows.add(new EngineView.Row("Bag", found.bag()));
            }
            if (!found.differs().isEmpty()) {
                rows.add(new EngineView.Row("Differs", found.differs()));
            }
        });
        return rows;
    }

    private static String piece(Strip.Piece piece) {
        StringBuilder words = new StringBuilder(piece.count() + " ×");
        if (!piece.thread().isEmpty()) {
            words.append(' ').append(piece.thread());
        }
        if (piece.length_mm() > 0) {
            words.append(", ").append(Figures.plain(piece.length_mm())).append(" mm long");
        }
        return piece.position().isEmpty() ? words.toString() : words + ", " + piece.position();
    }

    /** What stands in the count: what was typed, otherwise the last count or the file's. */
    public String count() {
        return form.typed("count").isEmpty() && form.sound()
                ? joint.map(one -> String.valueOf(job.fasteners(one.id()))).orElse("")
                : form.typed("count");
    }

    /** What stands in the bag: what was typed, the bag it is in, otherwise the next number. */
    public String bag() {
        if (!form.typed("bag").isEmpty() || !form.sound()) {
            return form.typed("bag");
        }
        return found().map(Facts.FoundJoint::bag)
                .filter(bag -> !bag.isEmpty())
                .orElseGet(() -> String.valueOf(job.nextBag()));
    }

    /** Numbers of the rows for sizes. */
    public List<Integer> sizes() {
        return IntStream.rangeClosed(1, FoundPages.PIECES).boxed().toList();
    }

    /** Whether something was typed into the sizes. */
    public boolean sized() {
        return sizes().stream()
                .anyMatch(row -> !form.typed("thread-" + row).isEmpty()
                        || !form.typed("length-" + row).isEmpty()
                        || !form.typed("many-" + row).isEmpty()
                        || !form.typed("where-" + row).isEmpty());
    }

    /** Hoses, looms and lines of the joint, whose way must be known when they go back. */
    public List<Runs> runs() {
        return joint.map(Joint::between).orElse(List.of()).stream()
                .filter(this::bends)
                .map(part -> new Runs(
                        part,
                        names.part(part),
                        job.facts().findings().routings().getOrDefault(part, List.of())))
                .toList();
    }

    /** A light part that the file names first in a flexible joint is what bends there. */
    private boolean bends(String part) {
        boolean light = job.engine()
                .findPart(part)
                .map(one -> one.massKilograms() < HEAVY)
                .orElse(false);
        return light
                && job.engine().joints().stream()
                        .anyMatch(other ->
                                other.flexible() && other.between().getFirst().equals(part));
    }
}
