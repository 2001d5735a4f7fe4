package gudgeon.app.web.today;

import gudgeon.app.desk.Daylight;
import gudgeon.app.desk.FinishForecast;
import gudgeon.app.desk.Job;
import gudgeon.app.desk.Today;
import gudgeon.app.desk.TodayQuestion;
import gudgeon.app.document.BuildWords;
import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.app.document.SessionWords;
import gudgeon.app.document.StepWords;
import gudgeon.app.document.ToldCautions;
import gudgeon.app.format.Caution;
import gudgeon.app.format.Cautions;
import gudgeon.app.web.jobs.JobPaths;
import gudgeon.app.web.jobs.SaidView;
import gudgeon.app.web.page.Form;
import gudgeon.core.planning.BuildPlan;
import gudgeon.core.session.SessionPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** What today's card shows. */
public final class TodayView {
    private final Job job;
    private final SessionForm asked;
    private final Optional<TodayQuestion.Reply> reply;
    private final Optional<FinishForecast> forecast;
    private final Supplier<String> entries;
    private final SaidView said;
    private final Names names;
    private final SessionWords words;

    TodayView(
            Job job,
            SessionForm asked,
            Optional<TodayQuestion.Reply> reply,
            Optional<FinishForecast> forecast,
            Supplier<String> entries,
            SaidView said) {
        this.job = job;
        this.asked = asked;
        this.reply = reply;
        this.forecast = forecast;
        this.entries = entries;
        this.said = said;
        this.names = new Names(job.engine());
        this.words = new SessionWords(job.engine());
    }

    /**
     * One step of the card.
     *
     * @param cautions written out before the step
     * @param titles by title only: written out shortly before, or of parts that come along
     * @param tools what to take in the hand
     */
    public record Step(
            int number, List<Caution> cautions, List<Title> titles, String instruction, String tools, String time) {
        public Step {
            cautions = List.copyOf(cautions);
            titles = List.copyOf(titles);
        }
    }

    /** The title of a caution, as grave as its text. */
    public record Title(boolean danger, String text) {}

    /** A tool, and for how many steps; {@code out} when it was said not to be there. */
    public record Tool(String name, String steps, boolean out) {}

    /** Steps of one zone. */
    public record Run(String zone, List<Step> steps) {
        public Run {
            steps = List.copyOf(steps);
        }
    }

    public Form form() {
        return asked.form();
    }

    public String path() {
        return JobPaths.job(job) + "/today";
    }

    public String jobPath() {
        return JobPaths.job(job);
    }

    /** A name for the entry of one form. */
    public String entry() {
        return entries.get();
    }

    public SaidView said() {
        return said;
    }

    private Optional<Today> card() {
        return reply.flatMap(one ->
                one instanceof TodayQuestion.Reply.Planned planned ? Optional.of(planned.today()) : Optional.empty());
    }

    private Today today() {
        return card().orElseThrow();
    }

    public boolean planned() {
        return card().isPresent();
    }

    /** Why there is no card; empty while a form is wrong. */
    public String nothing() {
        return reply.map(one -> one instanceof TodayQuestion.Reply.Nothing nothing
                        ? switch (nothing.stage()) {
                            case NO_TARGET -> "Nothing is to be reached yet.";
                            case STUCK -> "There is no plan as it stands; the page of the job says why.";
                            case TOGETHER -> "Every step is done.";
                            case STRIPPING, STRIPPED, BUILDING -> "";
                        }
                        : "")
                .orElse("");
    }

    public int steps() {
        return today().plan().steps();
    }

    public int all() {
        return today().works().size() + today().left().size();
    }

    private SessionPlan.Stop stop() {
        return today().plan().stop();
    }

    public String stopsWork() {
        return SessionWords.clock(today().stopsWork());
    }

    public String ends() {
        return SessionWords.clock(today().ends());
    }

    public String closing() {
        return SessionWords.minutes(stop().closeMinutes());
    }

    /** When the work is likely done: "14:05, at the latest 14:40". */
    public String likely() {
        return SessionWords.minutes(stop().independent().p50());
    }

    public String cautious() {
        return SessionWords.minutes(
                Math.max(stop().independent().p80(), stop().together().p80()));
    }

    /** 10 to 90 %, delays independent and going together. */
    public String band() {
        return SessionWords.minutes(stop().independent().p10()) + " to "
                + SessionWords.minutes(stop().independent().p90());
    }

    public String bandTogether() {
        return SessionWords.minutes(stop().together().p10()) + " to "
                + SessionWords.minutes(stop().together().p90());
    }

    public String chance() {
        return SessionWords.chance(
                Math.min(stop().independent().within(), stop().together().within()));
    }

    public boolean unsafeNow() {
        return today().plan().ended() == SessionPlan.Ended.UNSAFE_NOW;
    }

    /** What must not be left so, now. */
    public List<String> unsafe() {
        return today().request().now().unsafe().stream().map(words::unsafe).toList();
    }

    public String ended() {
        return words.ended(today().plan());
    }

    /** How far a bolder forecast would go; empty when no further. */
    public String bolder() {
        return today().plan()
                .bolder(today().question().chance())
                .map(stop -> "If you feel lucky: as far as step " + stop.steps()
                        + " by one of the two forecasts alone ("
                        + SessionWords.chance(Math.min(
                                stop.independent().within(), stop.together().within()))
                        + " by the other).")
                .orElse("");
    }

    /** "The sun sets at 16:02." */
    public String sun() {
        return today().light()
                .map(light -> sun(light.day()) + (light.outdoors() ? "" : " There is light of your own."))
                .orElse("");
    }

    private String sun(Daylight day) {
        if (day.always()) {
            return "The sun does not set today.";
        }
        return day.sets()
                .map(sets -> "The sun sets at " + SessionWords.clock(sets) + "."
                        + (today().endsWithTheLight() ? " The light ends the session." : "")
                        + (sets.isBefore(today().now()) ? " It is down." : ""))
                .orElse("The sun does not rise today.");
    }

    public boolean outdoors() {
        return card().flatMap(Today::light).map(Today.Light::outdoors).orElse(false);
    }

    public boolean placed() {
        return card().flatMap(Today::light).isPresent();
    }

    /** A joint to be soaked, so that the oil works while it is left alone. */
    public record Release(String joint, String name, String note) {}

    /** What is begun first and then left alone. */
    public List<Release> releases() {
        return today().today().stream()
                .filter(Today.Work.Soak.class::isInstance)
                .map(Today.Work.Soak.class::cast)
                .map(soak -> new Release(
                        soak.joint(),
                        Names.capital(names.any(soak.joint())) + " (" + names.zone(soak.zone()) + ")",
                        "seized " + SessionWords.chance(soak.chance()) + " of the time; leave it "
                                + Figures.plain(soak.hours()) + " hours"))
                .toList();
    }

    public List<Run> runs() {
        List<Run> runs = new ArrayList<>();
        ToldCautions told = new ToldCautions(Cautions.catalogue(), job.engine());
        String zone = "";
        List<Step> steps = new ArrayList<>();
        int number = 0;
        for (Today.Work work : today().today()) {
            number++;
            if (!names.zone(work.zone()).equals(zone) && !steps.isEmpty()) {
                runs.add(new Run(zone, steps));
                steps = new ArrayList<>();
            }
            zone = names.zone(work.zone());
            steps.add(step(number, work, told));
        }
        if (!steps.isEmpty()) {
            runs.add(new Run(zone, steps));
        }
        return runs;
    }

    private Step step(int number, Today.Work work, ToldCautions told) {
        List<String> ids = switch (work) {
            case Today.Work.Undo one -> one.operation().cautions();
            case Today.Work.Fit one -> BuildWords.cautions(one.operation());
            case Today.Work.Soak one -> List.of();
        };
        List<String> parts = switch (work) {
            case Today.Work.Undo one -> one.operation().pieces();
            case Today.Work.Fit one -> one.operation().kind() == BuildPlan.Kind.PLACE
                    ? one.operation().subject().parts()
                    : List.of();
            case Today.Work.Soak one -> List.of();
        };
        ToldCautions.Told now = told.at(number, ids, parts);
        List<Caution> full = new ArrayList<>(now.dangers());
        full.addAll(now.cautions());
        return new Step(
                number,
                full,
                titles(now),
                instruction(job, work),
                String.join(", ", work.tools()),
                SessionWords.minutes(
                        today().request().paces().time(work.nominal()).median()
                                + work.nominal().waitMinutes()));
    }

    private static List<Title> titles(ToldCautions.Told now) {
        List<Title> titles = new ArrayList<>();
        now.recent()
                .forEach(recent -> titles.add(new Title(
                        recent.caution().level() == Caution.Level.DANGER,
                        recent.caution().title() + ", as at step " + recent.step() + ".")));
        if (!now.along().isEmpty()) {
            titles.add(new Title(
                    false,
                    "With the parts that come along: "
                            + now.along().stream().map(one -> one.title() + ".").collect(Collectors.joining(" "))));
        }
        return titles;
    }

    /** One line for a step. */
    static String instruction(Job job, Today.Work work) {
        return switch (work) {
            case Today.Work.Undo one -> new StepWords(job.engine()).instruction(one.operation());
            case Today.Work.Fit one -> new BuildWords(job.engine()).instruction(one.operation());
            case Today.Work.Soak one -> new SessionWords(job.engine()).soak(one.joint());
        };
    }

    /** Tools of today, and those that were said not to be there. */
    public List<Tool> tools() {
        List<Tool> tools = new ArrayList<>();
        today().tools().forEach((tool, steps) -> tools.add(new Tool(tool, Figures.count(steps, "step"), false)));
        today().question().without().stream()
                .filter(tool -> tools.stream().noneMatch(there -> there.name().equals(tool)))
                .forEach(tool -> tools.add(new Tool(tool, "not here today", true)));
        return tools;
    }

    /** Openings to be covered before leaving. */
    public List<String> openings() {
        return words.names(stop().stand().openings());
    }

    public List<String> bare() {
        return words.names(stop().stand().bare());
    }

    /** Steps that are not for today, and why: those that wait for another are only counted. */
    public List<String> left() {
        List<String> left = new ArrayList<>();
        for (Today.LeftOut out : today().left()) {
            String name = Names.capital(names.any(out.id()));
            String about = Figures.list(out.about().stream().map(names::any).toList(), 3);
            switch (out.why()) {
                case TOOL -> left.add(name + ": " + about + " is not here");
                case LIFTING -> left.add("A lift: " + about + " is not here");
                case TROUBLE -> left.add(name + ": trouble, not solved");
                case LACKS -> left.add(name + ": lacks " + about);
                case WAITS -> {}
            }
        }
        long waits = today().left().stream()
                .filter(out -> out.why() == Today.LeftOut.Why.WAITS)
                .count();
        if (waits > 0) {
            left.add(waits + " more wait for what is left out");
        }
        return left;
    }

    /** The bands of all that is left. */
    public Optional<BandView> whole() {
        return forecast.filter(one -> one.whole().independent().mean() > 0).map(BandView::new);
    }
}
