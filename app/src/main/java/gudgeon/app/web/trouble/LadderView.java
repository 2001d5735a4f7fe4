package gudgeon.app.web.trouble;

import gudgeon.app.desk.Job;
import gudgeon.app.desk.JobOrder;
import gudgeon.app.desk.TroubleMet;
import gudgeon.app.document.Figures;
import gudgeon.app.document.RescueWords;
import gudgeon.app.document.StepWords;
import gudgeon.app.format.Caution;
import gudgeon.app.format.Cautions;
import gudgeon.app.web.engines.EnginePaths;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.core.book.Facts;
import gudgeon.core.book.Fault;
import gudgeon.core.book.RescueLadder;
import gudgeon.core.engine.Joint;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** What the ladder shows: how the trouble stands, what is left to try, what was tried. */
public final class LadderView {
    private static final int SECONDS = 60;

    private final Job job;
    private final Joint joint;
    private final Form form;
    private final Supplier<String> entries;
    private final SaidView said;
    private final Optional<Facts.TroubleSoFar> trouble;

    /**
     * @param entries names for the entries that the forms of the page make, one each
     */
    LadderView(Job job, Joint joint, Form form, Supplier<String> entries, SaidView said) {
        this.job = job;
        this.joint = joint;
        this.form = form;
        this.entries = entries;
        this.said = said;
        List<Facts.TroubleSoFar> all = job.facts().findings().troubles().stream()
                .filter(one -> one.trouble().joint().equals(joint.id()))
                .toList();
        this.trouble = all.stream()
                .filter(one -> !one.solved())
                .findFirst()
                .or(() -> all.isEmpty() ? Optional.empty() : Optional.of(all.getLast()));
    }

    /**
     * One thing to try.
     *
     * @param time working time and waiting, in words
     * @param last whether it destroys the fastener
     * @param first whether it is the gentlest that is left
     */
    public record Rung(
            String id, int number, String text, String time, List<Caution> cautions, boolean last, boolean first) {
        public Rung {
            cautions = List.copyOf(cautions);
        }
    }

    boolean inTrouble() {
        return trouble.isPresent();
    }

    private Facts.TroubleSoFar so() {
        return trouble.orElseThrow();
    }

    public SaidView said() {
        return said;
    }

    public Form form() {
        return form;
    }

    /** A name for the entry of one form. */
    public String entry() {
        return entries.get();
    }

    public String id() {
        return joint.id();
    }

    /** "Seized: exhaust nuts". */
    public String title() {
        return TroubleView.word(so().trouble().kind()) + ": " + joint.name();
    }

    /** Numbers of the fasteners concerned; empty when it was not said which. */
    public String which() {
        return Figures.list(so().trouble().fasteners().stream()
                .map(id -> id.substring(id.lastIndexOf('/') + 1))
                .toList());
    }

    public String fasteners() {
        return String.join(",", so().trouble().fasteners());
    }

    public String note() {
        return so().trouble().note();
    }

    public boolean solved() {
        return so().solved();
    }

    public boolean drilled() {
        return so().outcome() == Fault.Outcome.DRILLED;
    }

    /** What was tried and how it ended, in order. */
    public List<String> tried() {
        return so().tried().stream()
                .map(rescue -> RescueWords.rung(rescue.rung()) + ": " + RescueWords.outcome(rescue.outcome())
                        + (rescue.minutes() > 0 ? ", " + Figures.plain(rescue.minutes()) + " min" : ""))
                .toList();
    }

    /** What is left to try, gentlest first. */
    public List<Rung> rungs() {
        List<RescueLadder.Rung> left =
                TroubleMet.ladder(job, joint.id(), so().trouble().kind());
        return left.stream()
                .map(rung -> new Rung(
                        rung.id(),
                        left.indexOf(rung) + 1,
                        RescueWords.rung(rung.id()),
                        time(rung),
                        Cautions.catalogue().ranked(rung.cautions()),
                        rung.last(),
                        rung.equals(left.getFirst())))
                .toList();
    }

    private static String time(RescueLadder.Rung rung) {
        String work = "about " + Figures.time((long) rung.minutes() * SECONDS);
        return rung.waitMinutes() > 0
                ? work + ", then wait " + Figures.time((long) rung.waitMinutes() * SECONDS)
                : work;
    }

    /** What must be bought because of all troubles so far. */
    public List<String> toBuy() {
        return StepWords.spends(JobOrder.of(job).spoilt());
    }

    public String path() {
        return JobPaths.job(job) + "/trouble";
    }

    public String again() {
        return path() + "?joint=" + EnginePaths.encoded(id());
    }

    public String bench() {
        return JobPaths.bench(job);
    }

    public String order() {
        return JobPaths.job(job) + "/order";
    }

    /** Where the joint is given up and the plan made anew; empty when it is undone or given up already. */
    public String refuses() {
        boolean undone = job.facts().stripped().open().contains(id());
        boolean givenUp = job.facts().setting().willNotCome().contains(id());
        return undone || givenUp
                ? ""
                : JobPaths.strip(job) + "/refuses?joint=" + EnginePaths.encoded(id()) + "&back="
                        + EnginePaths.encoded(path() + "/ladder?joint=" + EnginePaths.encoded(id()));
    }
}
