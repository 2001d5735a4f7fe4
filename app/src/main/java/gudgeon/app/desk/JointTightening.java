package gudgeon.app.desk;

import gudgeon.app.format.QuantityKind;
import gudgeon.app.format.TypedQuantity;
import gudgeon.core.bolting.Adaptor;
import gudgeon.core.bolting.Bearing;
import gudgeon.core.bolting.Friction;
import gudgeon.core.bolting.MetricThread;
import gudgeon.core.bolting.PatternCheck;
import gudgeon.core.bolting.PlacePattern;
import gudgeon.core.bolting.PropertyClass;
import gudgeon.core.bolting.Tightening;
import gudgeon.core.bolting.Wrench;
import gudgeon.core.book.Facts;
import gudgeon.core.book.Keeping;
import gudgeon.core.engine.Fastener;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Makeup;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * How a joint of a job is tightened with what is in the toolbox: stage by stage what to set on which wrench, what preload comes of
 * it, how far it is, and how often its fasteners were tightened. A torque without the state of its thread is refused.
 */
public final class JointTightening {
    /** A torque wrench tells its range in its name: "torque wrench 20-100 N·m". */
    private static final Pattern RANGE = Pattern.compile(
            "(?i).*?(\\d[\\d.]*\\s*(?:-|–|to)\\s*\\d[\\d.]*\\s*(?:N[·⋅. ]?m|lbf[·. -]?(?:ft|in)|ft[ -]?lb|in[ -]?lb|kgf[·. ]?m))\\s*");

    private static final int NEIGHBOURS = 4;

    private final Job job;
    private final Joint joint;
    private final Optional<Adaptor> adaptor;
    private final List<Wrench> wrenches;

    /**
     * @param adaptor between wrench and fastener, when there is one
     * @throws java.util.NoSuchElementException when the job's engine has no such joint
     */
    public JointTightening(Job job, String joint, Toolbox toolbox, Optional<Adaptor> adaptor) {
        this.job = job;
        this.joint = job.engine().findJoint(joint).orElseThrow();
        this.adaptor = adaptor;
        this.wrenches = wrenches(toolbox);
    }

    /** Joints of the job that have stages, in file order. */
    public static List<Joint> joints(Job job) {
        return job.engine().joints().stream()
                .filter(joint -> !joint.makeup().stages().isEmpty())
                .toList();
    }

    /**
     * An adaptor as typed; empty when nothing was.
     *
     * @throws IllegalArgumentException when something cannot be read
     */
    public static Optional<Adaptor> adaptor(String offset, String wrench, String angle, Written written) {
        if (offset.isBlank() && wrench.isBlank()) {
            return Optional.empty();
        }
        double angle_deg = angle.isBlank()
                ? 0
                : written.quantity("angle", angle, QuantityKind.ANGLE).value();
        return Optional.of(
                new Adaptor(written.length_mm("wrench", wrench), written.length_mm("adaptor", offset), angle_deg));
    }

    /** Torque wrenches that are in the toolbox and tell their range. */
    private static List<Wrench> wrenches(Toolbox toolbox) {
        List<Wrench> found = new ArrayList<>();
        for (Facts.Tool tool : toolbox.tools().values()) {
            Matcher range = RANGE.matcher(tool.said().tool());
            if (tool.said().whose() != Keeping.Whose.MISSING && range.matches()) {
                TypedQuantity.Span span = TypedQuantity.readSpan("wrench", range.group(1), QuantityKind.TORQUE, false);
                found.add(new Wrench(
                        tool.said().tool(), span.least().value(), span.most().value()));
            }
        }
        return found;
    }

    /** The joint. */
    public Joint joint() {
        return joint;
    }

    /** Torque wrenches that are there. */
    public List<Wrench> wrenches() {
        return wrenches;
    }

    /**
     * One stage.
     *
     * @param number from 1
     * @param stage as the file has it
     * @param refused whether it is a torque without the state of its thread
     * @param setting_Nm what to set; empty for an angle, and when it is refused
     * @param choice which wrench; empty as the setting
     * @param band the preload that comes of it; empty when thread, class or friction are not known
     * @param had fasteners that have it
     */
    public record Stage(
            int number,
            Makeup.Stage stage,
            boolean refused,
            Optional<Double> setting_Nm,
            Optional<Wrench.Choice> choice,
            Optional<Tightening.Band> band,
            List<String> had) {
        public Stage {
            had = List.copyOf(had);
        }
    }

    /** Its stages in order. */
    public List<Stage> stages() {
        List<Makeup.Stage> stages = joint.makeup().stages();
        return IntStream.rangeClosed(1, stages.size())
                .mapToObj(number -> stage(number, stages.get(number - 1)))
                .toList();
    }

    private Stage stage(int number, Makeup.Stage stage) {
        boolean refused = stage.torque().isPresent() && stage.threadState().isBlank();
        Optional<Double> setting_Nm = stage.torque()
                .filter(torque -> !refused)
                .map(torque -> adaptor.map(between -> between.setting(torque.newtonMetres()))
                        .orElse(torque.newtonMetres()));
        return new Stage(
                number,
                stage,
                refused,
                setting_Nm,
                setting_Nm.map(setting -> Wrench.choose(setting, wrenches)),
                refused ? Optional.empty() : band(stage),
                had(number));
    }

    private Optional<Tightening.Band> band(Makeup.Stage stage) {
        Optional<Fastener> first = joint.makeup().fasteners().stream().findFirst();
        Optional<MetricThread> thread = first.flatMap(fastener -> MetricThread.find(fastener.thread()));
        Optional<PropertyClass> grade = first.flatMap(fastener -> PropertyClass.find(fastener.grade()));
        Optional<Friction.State> state = Friction.State.find(stage.threadState());
        if (thread.isEmpty()
                || grade.isEmpty()
                || state.isEmpty()
                || stage.torque().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Tightening(thread.get(), Bearing.typical(thread.get()))
                .band(stage.torque().get().newtonMetres(), state.get().range(), grade.get()));
    }

    private Optional<Facts.Tightened> tightened() {
        return Optional.ofNullable(job.facts().built().joints().get(joint.id()));
    }

    private List<String> had(int number) {
        boolean done = job.facts().built().steps().stream()
                .anyMatch(step -> step.step().equals(joint.id() + "/" + number));
        if (done) {
            return joint.makeup().fasteners().stream().map(Fastener::id).toList();
        }
        return tightened()
                .map(known -> known.stages().getOrDefault(number, Facts.Stage.UNTOUCHED))
                .map(stage ->
                        joint.makeup().stages().get(number - 1).angle().isPresent() ? stage.turned() : stage.reached())
                .orElse(List.of());
    }

    /** How often a fastener was tightened in this job: every beginning of its stages that it took part in. */
    public int cycles(Fastener fastener) {
        int before = tightened().map(Facts.Tightened::startedAgain).orElse(0);
        boolean now = IntStream.rangeClosed(1, joint.makeup().stages().size())
                .anyMatch(number -> had(number).contains(fastener.id()));
        return before + (now ? 1 : 0);
    }

    /** Fastener ids in the order of tightening; file order when there is no pattern. */
    public List<String> order() {
        List<Fastener> fasteners = joint.makeup().fasteners();
        List<Integer> pattern = joint.makeup().pattern();
        return pattern.isEmpty()
                ? fasteners.stream().map(Fastener::id).toList()
                : pattern.stream()
                        .map(position -> fasteners.get(position - 1).id())
                        .toList();
    }

    /** The file's own order, looked at; empty without an order or without places. */
    public Optional<PatternCheck> check() {
        List<Fastener> fasteners = joint.makeup().fasteners();
        List<PlacePattern.Spot> spots = fasteners.stream()
                .map(Fastener::place)
                .filter(place -> place.x_mm().isPresent() && place.y_mm().isPresent())
                .map(place -> new PlacePattern.Spot(
                        place.x_mm().getAsDouble(), place.y_mm().getAsDouble()))
                .toList();
        if (joint.makeup().pattern().isEmpty() || spots.size() < fasteners.size() || spots.size() < NEIGHBOURS) {
            return Optional.empty();
        }
        boolean crossed = PlacePattern.order("cross", spots.size(), spots)
                .equals(joint.makeup().pattern());
        return Optional.of(PatternCheck.of(joint.makeup().pattern(), spots.size(), spots, !crossed));
    }
}
