package gudgeon.app.web.bolts;

import gudgeon.app.desk.Job;
import gudgeon.app.desk.JointTightening;
import gudgeon.app.document.AnswerRow;
import gudgeon.app.document.BoltWords;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.app.document.StepWords;
import gudgeon.app.format.Caution;
import gudgeon.app.format.Cautions;
import gudgeon.app.web.engines.JointView;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.page.Form;
import gudgeon.app.web.picture.HolePicture;
import gudgeon.core.bolting.Wrench;
import gudgeon.core.engine.Fastener;
import gudgeon.core.engine.Joint;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** How one joint of a job is tightened. */
public final class BoltView {
    private final Job job;
    private final JointTightening tightening;
    private final Joint joint;
    private final Form form;
    private final Names names;
    private final List<JointTightening.Stage> stages;

    BoltView(Job job, JointTightening tightening, Form form) {
        this.job = job;
        this.tightening = tightening;
        this.joint = tightening.joint();
        this.form = form;
        this.names = new Names(job.engine());
        this.stages = tightening.stages();
    }

    /**
     * A stage.
     *
     * @param goal torque or angle with the state of the thread
     * @param set what to set on the wrench; empty for an angle
     * @param take which wrench; empty when there is none
     * @param others wrenches that do not suit, and why
     * @param band preload, line by line
     * @param refused whether the thread state is missing
     * @param done how many have it
     */
    public record Stage(
            int number,
            String goal,
            String set,
            String take,
            List<String> others,
            List<AnswerRow> band,
            boolean refused,
            String done) {
        public Stage {
            others = List.copyOf(others);
            band = List.copyOf(band);
        }
    }

    /** Whether no preload can be worked out, because the file does not say how strong the bolts are. */
    public boolean noBand() {
        return stages.stream()
                .noneMatch(stage -> stage.band().isPresent() || stage.stage().torque().isEmpty());
    }

    public String name() {
        return joint.name();
    }

    public String between() {
        return names.between(joint);
    }

    public Form form() {
        return form;
    }

    public String path() {
        return JobPaths.job(job) + "/bolts/" + joint.id();
    }

    public String list() {
        return JobPaths.job(job) + "/bolts";
    }

    public String toolbox() {
        return JobPaths.job(job) + "/toolbox";
    }

    public String correction() {
        return JobPaths.job(job) + "/engine/joint?joint=" + joint.id();
    }

    public List<Caution> cautions() {
        return Cautions.catalogue().ranked(joint.work().cautions());
    }

    public List<String> fasteners() {
        return StepWords.fasteners(joint);
    }

    /** Whether no torque wrench of the toolbox tells its range. */
    public boolean noWrench() {
        return tightening.wrenches().isEmpty();
    }

    public List<Stage> stages() {
        List<String> goals = JointView.stages(joint);
        return stages.stream()
                .map(stage -> stage(stage, goals.get(stage.number() - 1)))
                .toList();
    }

    private Stage stage(JointTightening.Stage stage, String goal) {
        int all = joint.makeup().fasteners().size();
        List<String> others = stage.choice()
                .map(choice -> choice.judged().stream()
                        .filter(judged -> judged.fit() != Wrench.Fit.SUITS)
                        .map(judged -> judged.wrench().name() + ": " + BoltWords.reason(judged))
                        .toList())
                .orElse(List.of());
        return new Stage(
                stage.number(),
                goal,
                stage.setting_Nm()
                        .map(setting -> String.format(Locale.ROOT, "%.1f N·m", setting))
                        .orElse(""),
                stage.choice().flatMap(Wrench.Choice::best).map(Wrench::name).orElse(""),
                others,
                stage.band().map(BoltWords::band).orElse(List.of()),
                stage.refused(),
                stage.had().size() >= all
                        ? "all " + all + " have it"
                        : stage.had().size() + " of " + all + " have it");
    }

    /** The pattern: the number of each in the order; crossed and filled when it has the stage that is worked on. */
    public HolePicture picture() {
        List<String> order = tightening.order();
        List<String> had = current().had();
        return HolePicture.of(
                joint,
                (fastener, number) -> new HolePicture.Sign(
                        String.valueOf(order.indexOf(fastener.id()) + 1),
                        had.contains(fastener.id()) ? HolePicture.State.DONE : HolePicture.State.PLAIN));
    }

    /** The first stage that not all have; the last when all have all. */
    private JointTightening.Stage current() {
        int all = joint.makeup().fasteners().size();
        return stages.stream()
                .filter(stage -> stage.had().size() < all)
                .findFirst()
                .orElse(stages.getLast());
    }

    /** Which stage the picture shows. */
    public int shown() {
        return current().number();
    }

    /** What is wrong with the order of the file; empty when there is nothing to look at. */
    public List<AnswerRow> check() {
        return tightening.check().map(BoltWords::pattern).orElse(List.of());
    }

    /** What is to be said of the order besides. */
    public List<String> remarks() {
        return check().stream()
                .filter(row -> row.label().isEmpty())
                .map(row -> Names.capital(row.text()))
                .toList();
    }

    /** How often the bolts were tightened, those alike together. */
    public List<AnswerRow> cycles() {
        List<AnswerRow> rows = new ArrayList<>();
        List<String> order = tightening.order();
        int most = joint.makeup().fasteners().stream()
                .mapToInt(tightening::cycles)
                .max()
                .orElse(0);
        for (int times = most; times >= 1; times--) {
            int wanted = times;
            List<String> numbers = joint.makeup().fasteners().stream()
                    .filter(fastener -> tightening.cycles(fastener) == wanted)
                    .map(Fastener::id)
                    .map(id -> String.valueOf(order.indexOf(id) + 1))
                    .toList();
            if (!numbers.isEmpty()) {
                rows.add(new AnswerRow(times == 1 ? "once" : times + " times", "number " + Figures.list(numbers)));
            }
        }
        return rows;
    }
}
