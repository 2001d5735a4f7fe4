package gudgeon.app.web.today;

import gudgeon.app.desk.ComingBack;
import gudgeon.app.desk.FinishForecast;
import gudgeon.app.desk.Job;
import gudgeon.app.document.EntryWords;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.app.document.SessionWords;
import gudgeon.app.web.jobs.ContradictionWords;
import gudgeon.app.web.jobs.JobDesk;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.core.book.Entry;
import java.util.List;
import java.util.Optional;

/** What the page of coming back shows. */
public final class BackView {
    private final Job job;
    private final ComingBack back;
    private final Optional<FinishForecast> forecast;
    private final Form form;
    private final JobDesk desk;
    private final SaidView said;
    private final Names names;
    private final SessionWords words;
    private final EntryWords entries;

    BackView(Job job, ComingBack back, Optional<FinishForecast> forecast, Form form, JobDesk desk, SaidView said) {
        this.job = job;
        this.back = back;
        this.forecast = forecast;
        this.form = form;
        this.desk = desk;
        this.said = said;
        this.names = new Names(job.engine());
        this.words = new SessionWords(job.engine());
        this.entries = new EntryWords(job.engine());
    }

    /** Something that can be put right with one button. @param about what the book is told */
    public record Care(String name, String about, String note) {}

    /** An entry. */
    public record Line(String when, String text) {}

    public Form form() {
        return form;
    }

    public SaidView said() {
        return said;
    }

    public String path() {
        return JobPaths.job(job) + "/back";
    }

    public String jobPath() {
        return JobPaths.job(job);
    }

    /** A name for the entry of one form. */
    public String entry() {
        return desk.newEntry();
    }

    public String away() {
        return back.left()
                .worked()
                .map(worked -> "The last step was written on " + SessionWords.day(worked) + ", "
                        + SessionWords.days(back.left().days()) + ".")
                .orElse("No step was written yet.");
    }

    /** What was begun and not done; empty when nothing. */
    public String midStep() {
        return back.left().midStep().isEmpty() ? "" : Names.capital(names.any(back.left().midStep()));
    }

    public boolean sessionOpen() {
        return back.left().sessionOpen();
    }

    public boolean leftUnsafe() {
        return !back.left().safe();
    }

    public String leftNote() {
        return back.left().note();
    }

    public List<String> unsafe() {
        return back.openings().unsafe().stream().map(words::unsafe).toList();
    }

    public List<Care> openings() {
        return back.openings().joints().stream()
                .map(joint -> new Care(Names.capital(names.any(joint)), joint, ""))
                .toList();
    }

    public List<String> covered() {
        return back.openings().covered().stream().map(names::any).map(Names::capital).toList();
    }

    public List<Care> bare() {
        return back.bare().stream()
                .map(surface -> new Care(
                        Names.capital(names.any(surface.surface())),
                        surface.surface(),
                        surface.oiled()
                                ? "oiled " + SessionWords.days(surface.days())
                                : "never oiled, as far as the book knows"))
                .toList();
    }

    public List<String> sealants() {
        return back.sealants().stream()
                .map(sealed -> Names.capital(names.any(sealed.joint())) + ", " + sealed.spec() + ": "
                        + switch (sealed.state()) {
                            case SPENT -> "past its open time. Clean it off and begin again.";
                            case STILL_OPEN -> "put it together by " + SessionWords.clock(sealed.until()) + ".";
                            case CURING -> "cures until " + SessionWords.clock(sealed.until()) + ", "
                                    + SessionWords.day(sealed.until()) + ".";
                        })
                .toList();
    }

    public List<Line> since() {
        return back.since().stream().map(this::line).toList();
    }

    public List<Line> lookAgain() {
        return back.lookAgain().stream().map(this::line).toList();
    }

    private Line line(Entry entry) {
        return new Line(SessionWords.day(entry.stamp().at()), Names.capital(entries.of(entry)));
    }

    public List<String> contradictions() {
        return back.contradictions().stream()
                .map(one -> ContradictionWords.of(one, names))
                .toList();
    }

    /** The small thing to begin with. */
    public String begin() {
        return switch (back.begin()) {
            case ComingBack.Begin.CleanOff(String joint) ->
                "Clean the old sealant off both faces: " + names.any(joint) + ".";
            case ComingBack.Begin.Oil(List<String> surfaces) ->
                "Wipe and oil what is bare: " + Figures.list(surfaces.stream().map(names::any).toList(), 3) + ".";
            case ComingBack.Begin.Cover(List<String> joints) ->
                "Cover what stands open: " + Figures.list(joints.stream().map(names::any).toList(), 3) + ".";
            case ComingBack.Begin.Steps steps ->
                TodayView.instruction(job, steps.today().today().getFirst()) + ".";
            case ComingBack.Begin.LayOut(var next) ->
                next.map(work -> "Lay out for the next step: " + TodayView.instruction(job, work) + ".")
                        .orElse("Go through the bags and count them.");
        };
    }

    public Optional<BandView> whole() {
        return forecast.filter(one -> one.whole().independent().mean() > 0).map(BandView::new);
    }
}
