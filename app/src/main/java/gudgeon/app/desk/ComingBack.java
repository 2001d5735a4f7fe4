package gudgeon.app.desk;

import gudgeon.core.book.Body;
import gudgeon.core.book.Build;
import gudgeon.core.book.Entry;
import gudgeon.core.book.Facts;
import gudgeon.core.book.Fluid;
import gudgeon.core.book.JobState;
import gudgeon.core.book.Keeping;
import gudgeon.core.book.Setup;
import gudgeon.core.book.Strip;
import gudgeon.core.book.Word;
import gudgeon.core.engine.Feature;
import gudgeon.core.engine.Makeup;
import gudgeon.core.session.Stand;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Coming back to a job after a pause, however it came about: what the book says of how it was left, what has happened since, what
 * is open, due, spent or contradictory, what to look at again, and one small thing to begin with. Nothing here is stored.
 *
 * @param left how and when it was left
 * @param openings what stands open and is not covered
 * @param sealants sealants that are on a joint that is not together, or still cure
 * @param bare surfaces that rust, the longest bare first
 * @param since entries after the last step, oldest first
 * @param lookAgain entries of the last three signed steps, the last one first; they are looked at, never done again
 * @param contradictions what does not fit together
 * @param begin the small thing to begin with
 */
public record ComingBack(
        Left left,
        Openings openings,
        List<Sealed> sealants,
        List<Bare> bare,
        List<Entry> since,
        List<Entry> lookAgain,
        List<Facts.Contradiction> contradictions,
        Begin begin) {
    /** How many signed steps are looked at again: common practice of aviation maintenance after an interruption. */
    private static final int LOOK_AGAIN = 3;

    /** End of the id of a step that puts sealant on. */
    private static final String SEAL = "/seal";

    /** Oil on a bright surface is renewed after so many days. Typical, common practice. */
    public static final long OIL_DAYS = 14;

    /** How long the small thing takes at most. */
    public static final int BEGIN_MINUTES = 15;

    public ComingBack {
        sealants = List.copyOf(sealants);
        bare = List.copyOf(bare);
        since = List.copyOf(since);
        lookAgain = List.copyOf(lookAgain);
        contradictions = List.copyOf(contradictions);
    }

    /**
     * How it was left.
     *
     * @param worked when the last step was written; empty when there was none
     * @param days whole days since
     * @param midStep the operation that was begun and not done; empty when none
     * @param sessionOpen whether the last session never ended
     * @param safe whether the last session that ended was left safe
     * @param note what was left as it is
     */
    public record Left(
            Optional<OffsetDateTime> worked,
            long days,
            String midStep,
            boolean sessionOpen,
            boolean safe,
            String note) {}

    /**
     * Openings.
     *
     * @param joints undone, open to a fluid, gas or fuel, and not covered
     * @param covered what the book says is covered, and with what
     * @param unsafe what must not be left so, now
     */
    public record Openings(List<String> joints, List<String> covered, List<Stand.Unsafe> unsafe) {
        public Openings {
            joints = List.copyOf(joints);
            covered = List.copyOf(covered);
            unsafe = List.copyOf(unsafe);
        }
    }

    /**
     * A sealant.
     *
     * @param on when it went on, or when the joint was tightened for a cure
     * @param until until when it may be closed, or until when it cures
     */
    public record Sealed(String joint, String spec, OffsetDateTime on, OffsetDateTime until, State state) {
        /** How it stands. */
        public enum State {
            /** It may still be put together. */
            STILL_OPEN,
            /** Past its open time: clean it off, begin again. */
            SPENT,
            /** Together, and not to be filled or started before. */
            CURING
        }
    }

    /**
     * A surface that rusts.
     *
     * @param surface what was written of it, or the feature's id
     * @param days whole days since it was last oiled; when it never was, since the last step, so at least that
     * @param oiled whether it ever was
     */
    public record Bare(String surface, long days, boolean oiled) {
        public boolean due() {
            return !oiled || days >= OIL_DAYS;
        }
    }

    /** The small thing to begin with. */
    public sealed interface Begin {
        /** Cover what stands open. */
        record Cover(List<String> joints) implements Begin {}

        /** Clean off a sealant that is past its time. */
        record CleanOff(String joint) implements Begin {}

        /** Oil what rusts. */
        record Oil(List<String> surfaces) implements Begin {}

        /** Steps of the plan that are done and safe within the time. */
        record Steps(Today today) implements Begin {}

        /** No step is that short: lay out for the next one. */
        record LayOut(Optional<Today.Work> next) implements Begin {}
    }

    /** @param now when somebody comes back */
    public static ComingBack to(Job job, OffsetDateTime now) {
        List<Entry> entries = job.state().history().stream()
                .filter(JobState.Told::counts)
                .map(JobState.Told::entry)
                .toList();
        Optional<Entry> lastStep = entries.stream().filter(ComingBack::isStep).reduce((first, second) -> second);
        Facts.Clocked clocked = job.facts().clocked();
        Left left = new Left(
                lastStep.map(entry -> entry.stamp().at()),
                lastStep.map(entry -> days(entry.stamp().at(), now)).orElse(0L),
                clocked.session().map(Facts.Session::operation).orElse(""),
                clocked.session().isPresent(),
                clocked.leftSafe(),
                clocked.left());
        Optional<Today> today = new TodayQuestion(
                                BEGIN_MINUTES,
                                gudgeon.core.session.SessionRequest.USUAL_CHANCE,
                                java.util.OptionalDouble.of(0),
                                List.of(),
                                List.of(),
                                List.of(),
                                true)
                        .ask(job, now)
                instanceof TodayQuestion.Reply.Planned planned
                ? Optional.of(planned.today())
                : Optional.empty();
        Stand stand = today.map(card -> card.request().now()).orElse(Stand.CLOSED);
        Openings openings = new Openings(
                stand.openings(),
                job.facts().ledger().covered().entrySet().stream()
                        .map(cover -> cover.getKey() + (cover.getValue().isBlank() ? "" : ": " + cover.getValue()))
                        .toList(),
                stand.unsafe());
        List<Sealed> sealants = sealants(job, entries, now);
        List<Bare> bare = bare(job, stand, left, now);
        return new ComingBack(
                left,
                openings,
                sealants,
                bare,
                since(entries, lastStep),
                lookAgain(entries),
                job.facts().contradictions(),
                begin(openings, sealants, bare, today));
    }

    private static long days(OffsetDateTime from, OffsetDateTime to) {
        return Math.max(0, ChronoUnit.DAYS.between(from, to));
    }

    /** Work on the engine, which somebody answers for. */
    private static boolean isStep(Entry entry) {
        return switch (entry.body()) {
            case Strip.OperationDone done -> true;
            case Strip.Removed removed -> true;
            case Strip.PutBack back -> true;
            case Build.StepBuilt built -> true;
            case Build.StageReached reached -> true;
            case Build.AngleTurned turned -> true;
            case Build.CheckSigned signed -> true;
            default -> false;
        };
    }

    private static List<Entry> since(List<Entry> entries, Optional<Entry> lastStep) {
        int from = lastStep.map(entries::indexOf).orElse(-1) + 1;
        return entries.subList(from, entries.size()).stream()
                .filter(entry -> happensWithoutWork(entry.body()))
                .toList();
    }

    /** What can happen to a job while nobody works on it. */
    private static boolean happensWithoutWork(Body body) {
        return switch (body) {
            case Keeping keeping -> true;
            case Fluid fluid -> true;
            case Word.Note note -> true;
            case Word.Newer newer -> true;
            case Setup.EngineCorrected corrected -> true;
            case Setup.TargetSet target -> true;
            case Setup.WillNotCome wont -> true;
            case Setup.SessionEnded ended -> true;
            default -> false;
        };
    }

    /** The last three steps; a stage and its step, said at one stroke, are one. */
    private static List<Entry> lookAgain(List<Entry> entries) {
        List<Entry> last = new ArrayList<>();
        for (int i = entries.size() - 1; i >= 0 && last.size() < LOOK_AGAIN; i--) {
            Entry entry = entries.get(i);
            boolean sameStroke = !last.isEmpty()
                    && last.getLast().stamp().at().equals(entry.stamp().at())
                    && entry.body() instanceof Build
                    && last.getLast().body() instanceof Build;
            if (isStep(entry) && !sameStroke) {
                last.add(entry);
            }
        }
        return last;
    }

    /** Each joint by the sealant that was put on last: an older one was cleaned off before. */
    private static List<Sealed> sealants(Job job, List<Entry> entries, OffsetDateTime now) {
        Map<String, OffsetDateTime> last = new LinkedHashMap<>();
        for (Entry entry : entries) {
            if (entry.body() instanceof Build.StepBuilt built && built.step().endsWith(SEAL)) {
                last.put(
                        built.step().substring(0, built.step().length() - SEAL.length()),
                        entry.stamp().at());
            }
        }
        List<Sealed> sealants = new ArrayList<>();
        last.forEach((joint, on) -> job.engine()
                .findJoint(joint)
                .flatMap(found -> found.makeup().sealant())
                .flatMap(spec -> sealed(job, joint, spec, on, entries, now))
                .ifPresent(sealants::add));
        return sealants;
    }

    private static Optional<Sealed> sealed(
            Job job,
            String joint,
            Makeup.Sealant sealant,
            OffsetDateTime on,
            List<Entry> entries,
            OffsetDateTime now) {
        if (job.facts().stripped().open().contains(joint)) {
            OffsetDateTime until = on.plusSeconds(sealant.openSeconds());
            boolean spent = sealant.openSeconds() > 0 && now.isAfter(until);
            return Optional.of(new Sealed(
                    joint, sealant.spec(), on, until, spent ? Sealed.State.SPENT : Sealed.State.STILL_OPEN));
        }
        OffsetDateTime tightened = entries.stream()
                .filter(entry -> entry.body() instanceof Build.StepBuilt built
                        && built.step().startsWith(joint + "/"))
                .map(entry -> entry.stamp().at())
                .reduce(on, (first, second) -> second);
        OffsetDateTime cured = tightened.plusSeconds(sealant.cureSeconds());
        return cured.isAfter(now)
                ? Optional.of(new Sealed(joint, sealant.spec(), tightened, cured, Sealed.State.CURING))
                : Optional.empty();
    }

    private static List<Bare> bare(Job job, Stand stand, Left left, OffsetDateTime now) {
        List<Bare> bare = new ArrayList<>();
        job.facts().ledger().oiled().forEach((surface, when) -> bare.add(new Bare(surface, days(when, now), true)));
        for (String id : stand.bare()) {
            Feature feature = job.engine().findFeature(id).orElseThrow();
            boolean oiled = job.facts().ledger().oiled().keySet().stream().anyMatch(surface -> means(surface, feature, job));
            if (!oiled) {
                bare.add(new Bare(id, left.days(), false));
            }
        }
        bare.sort((a, b) -> Long.compare(b.days(), a.days()));
        return bare;
    }

    /** Whether what was written as oiled is a feature, or all features of a part or of a kind: "bores", "block face". */
    private static boolean means(String surface, Feature feature, Job job) {
        String said = singular(surface);
        return said.equals(singular(feature.id()))
                || said.equals(singular(feature.kind()))
                || hasWords(singular(feature.name()), said)
                || feature.parts().stream()
                        .anyMatch(part -> said.equals(singular(part))
                                || said.equals(singular(job.engine().part(part).name())));
    }

    private static String singular(String words) {
        return words.strip().toLowerCase(Locale.ROOT).replaceAll("(?<=\\p{L})s\\b", "");
    }

    /** Whether whole words stand one after the other in a name. */
    private static boolean hasWords(String name, String words) {
        return !words.isEmpty() && (" " + name + " ").contains(" " + words + " ");
    }

    /** What is due before any step, then a step that is short enough. */
    private static Begin begin(Openings openings, List<Sealed> sealants, List<Bare> bare, Optional<Today> today) {
        Optional<Sealed> spent = sealants.stream()
                .filter(sealed -> sealed.state() == Sealed.State.SPENT)
                .findFirst();
        if (spent.isPresent()) {
            return new Begin.CleanOff(spent.get().joint());
        }
        List<String> due = bare.stream().filter(Bare::due).map(Bare::surface).toList();
        if (!due.isEmpty()) {
            return new Begin.Oil(due);
        }
        if (!openings.joints().isEmpty()) {
            return new Begin.Cover(openings.joints());
        }
        Optional<Today> fits = today.filter(card -> card.plan().steps() > 0)
                .filter(card -> card.plan().stop().fits(card.question().chance()));
        return fits.<Begin>map(Begin.Steps::new)
                .orElseGet(() -> new Begin.LayOut(
                        today.flatMap(card -> card.works().stream().findFirst())));
    }

    /** Whether it is long enough ago that one should come back rather than go on. */
    public static boolean isAway(Job job, OffsetDateTime now) {
        return job.facts()
                .clocked()
                .last()
                .filter(last -> Duration.between(last, now).toHours() >= 12)
                .isPresent();
    }
}
