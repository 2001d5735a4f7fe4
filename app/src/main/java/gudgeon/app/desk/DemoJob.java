package gudgeon.app.desk;

import gudgeon.app.store.EntryStore;
import gudgeon.app.store.SqliteStore;
import gudgeon.core.book.Body;
import gudgeon.core.book.Fault;
import gudgeon.core.book.Fluid;
import gudgeon.core.book.Keeping;
import gudgeon.core.book.RescueLadder;
import gudgeon.core.book.Setup;
import gudgeon.core.book.Strip;
import gudgeon.core.book.Word;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.planning.StripPlan;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** A job in mid-strip with an invented book: the pickup of the demo, three weekends in, a stud that will not come. */
public final class DemoJob {
    /** What its owner calls it. */
    public static final String NAME = "Pickup: hard to start, uses coolant";

    private static final Who OWNER = new Who("Ada", "phone", "");
    /** Operations of the plan that are done by now, and those after which a session ended. */
    private static final int DONE = 74;

    private static final List<Integer> ENDS = List.of(24, 51);

    private DemoJob() {}

    /**
     * Puts the job into a store, unless it is there.
     *
     * @param now the story ends yesterday
     * @return the job's id
     */
    public static String into(Path file, StripQuestion.Reply.Planned planned, Clock now) {
        try (EntryStore store = SqliteStore.open(file)) {
            return new Tale(store, planned, now).told();
        }
    }

    /** A clock that the tale moves on. */
    private static final class StoryClock extends Clock {
        private final ZoneId zone;
        private Instant instant;

        StoryClock(Instant instant, ZoneId zone) {
            this.instant = instant;
            this.zone = zone;
        }

        void pass(Duration time) {
            instant = instant.plus(time);
        }

        void nextWeekend() {
            instant = instant.atZone(zone)
                    .toLocalDate()
                    .plusDays(7)
                    .atTime(LocalTime.of(9, 20))
                    .atZone(zone)
                    .toInstant();
        }

        @Override
        public ZoneId getZone() {
            return zone;
        }

        @Override
        public Clock withZone(ZoneId other) {
            return new StoryClock(instant, other);
        }

        @Override
        public Instant instant() {
            return instant;
        }
    }

    private static final class Tale {
        private final Workshop workshop;
        private final StripQuestion.Reply.Planned planned;
        private final StoryClock clock;
        private Job job;
        private int bag;

        Tale(EntryStore store, StripQuestion.Reply.Planned planned, Clock now) {
            this.planned = planned;
            clock = new StoryClock(
                    now.instant()
                            .atZone(now.getZone())
                            .toLocalDate()
                            .minusDays(15)
                            .atTime(LocalTime.of(9, 10))
                            .atZone(now.getZone())
                            .toInstant(),
                    now.getZone());
            workshop = new Workshop(store, clock, new EntryIds(clock));
            job = workshop.jobIds().stream()
                    .flatMap(id -> workshop.findJob(id).stream())
                    .filter(known -> known.name().equals(NAME))
                    .findFirst()
                    .orElseGet(this::written);
        }

        String told() {
            return job.id();
        }

        private Job written() {
            OpenJob open = new OpenJob(
                    NAME,
                    new OpenJob.Start.Shipped(DemoQuestion.ENGINE),
                    StripQuestion.Goal.reach(DemoQuestion.PART),
                    new Setup.Settings(List.of("helper"), 0, "metric", ""));
            job = switch (open.open(workshop, OWNER, Optional.empty())) {
                case OpenJob.Reply.Opened opened -> opened.job();
                case OpenJob.Reply.Refused refused -> throw new IllegalStateException("refused: " + refused.problems());
            };
            say(new Word.Note("As found: hard to start from cold, down on power, a litre of coolant gone in a week."));
            begin("first");
            List<StripPlan.Operation> operations = planned.plan().operations();
            for (int i = 0; i < Math.min(DONE, operations.size() - 1); i++) {
                done(operations.get(i));
                if (ENDS.contains(i)) {
                    rest(i);
                }
            }
            stuck(operations.subList(DONE, operations.size()));
            return job;
        }

        private void begin(String session) {
            say(new Setup.SessionStarted(session));
        }

        private void rest(int after) {
            say(new Keeping.Covered("Intake ports", "tape"));
            say(new Setup.SessionEnded(job.facts().clocked().session().orElseThrow().id(), true, ""));
            clock.nextWeekend();
            begin(after == ENDS.getFirst() ? "second" : "third");
        }

        private void done(StripPlan.Operation step) {
            // This owner takes a little less than twice the file's time; a lift is no matter of pace.
            double minutes = Math.max(1, Math.round(step.seconds() * 1.7 / 60));
            clock.pass(Duration.ofSeconds(60 + Math.round(minutes * 60)));
            if (step.kind() == StripPlan.Kind.LIFT) {
                boolean aside = step.lift() != null && step.lift().aside();
                deed(new PartsOff(step.pieces(), aside ? "tied up on the engine" : "shelf 2", aside, ""));
                return;
            }
            Optional<Joint> joint = planned.engine().findJoint(step.id());
            int fasteners = joint.map(j -> j.makeup().fasteners().size()).orElse(0);
            boolean bagged = fasteners > 0 && joint.map(j -> !j.flexible()).orElse(false);
            deed(new StepDone(
                    step.id(),
                    bagged ? OptionalInt.of(fasteners) : OptionalInt.empty(),
                    bagged ? Integer.toString(++bag) : "",
                    minutes,
                    false));
            if (step.kind() == StripPlan.Kind.DRAIN) {
                drained(planned.engine(), step);
            }
        }

        private void drained(Engine engine, StripPlan.Operation step) {
            engine.circuits().stream()
                    .filter(circuit -> circuit.drains().contains(step.id()))
                    .findFirst()
                    .ifPresent(circuit -> say(new Fluid.Drained(circuit.id(), 2.5, "marked can, for the council tip")));
        }

        private void stuck(List<StripPlan.Operation> left) {
            left.stream()
                    .filter(step -> planned.engine()
                            .findJoint(step.id())
                            .filter(joint -> joint.makeup().fasteners().size() > 2)
                            .isPresent())
                    .findFirst()
                    .ifPresent(step -> {
                        String joint = step.id();
                        deed(new TroubleMet(joint, Fault.Kind.SEIZED, List.of("1"), "turns a little, then stops"));
                        RescueLadder.Rung rung = TroubleMet.ladder(job, joint, Fault.Kind.SEIZED)
                                .getFirst();
                        deed(new RescueTried(joint, List.of("1"), rung.id(), 15, Fault.Outcome.NO));
                    });
            say(new Word.Note("Light is going. Soaked again, back tomorrow."));
        }

        private void say(Body body) {
            clock.pass(Duration.ofSeconds(40));
            deed(Say.that(body));
        }

        private void deed(Deed deed) {
            job = workshop.write(job, deed, OWNER);
        }
    }
}
