package gudgeon.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.app.store.SqliteStore;
import gudgeon.core.book.Setup;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

/** A workshop on a fresh store, with a clock that stands still until told, and short ways of saying things. */
final class TestBench implements AutoCloseable {
    final Workshop workshop;
    Job job;
    private final Moving clock;

    /** A clock that moves only when told. */
    private static final class Moving extends Clock {
        private Instant now = Instant.parse("2026-10-03T08:00:00Z");

        @Override
        public ZoneId getZone() {
            return ZoneOffset.ofHours(1);
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return Clock.fixed(now, zone);
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    TestBench(Path folder, OpenJob.Start start, String... reach) {
        clock = new Moving();
        workshop = new Workshop(SqliteStore.open(folder.resolve("books.sqlite")), clock, new EntryIds(clock));
        OpenJob opening = new OpenJob(
                "Barn job",
                start,
                new StripQuestion.Goal(List.of(reach), List.of(), List.of(), List.of()),
                new Setup.Settings(List.of("helper"), 0, "metric", ""));
        OpenJob.Reply reply = opening.open(workshop, Who.SOMEBODY, Optional.empty());
        assertThat(reply).isInstanceOf(OpenJob.Reply.Opened.class);
        job = ((OpenJob.Reply.Opened) reply).job();
    }

    /** Time goes by. */
    void later(Duration time) {
        clock.now = clock.now.plus(time);
    }

    /** Says a deed and fails when it is refused. */
    Workshop.Noted.Done say(Deed deed) {
        Workshop.Noted noted = workshop.note(job, deed, Who.SOMEBODY, Optional.empty());
        assertThat(noted).as("%s", noted).isInstanceOf(Workshop.Noted.Done.class);
        Workshop.Noted.Done done = (Workshop.Noted.Done) noted;
        job = done.job();
        return done;
    }

    /** Says a deed that must be refused. */
    List<FieldProblem> refused(Deed deed) {
        Workshop.Noted noted = workshop.note(job, deed, Who.SOMEBODY, Optional.empty());
        assertThat(noted).isInstanceOf(Workshop.Noted.Refused.class);
        return ((Workshop.Noted.Refused) noted).problems();
    }

    @Override
    public void close() {
        workshop.close();
    }
}
