package gudgeon.app.desk;

import gudgeon.app.store.EntryStore;
import gudgeon.app.store.IdTaken;
import gudgeon.app.store.SqliteStore;
import gudgeon.core.book.Body;
import gudgeon.core.book.Entry;
import gudgeon.core.book.JobState;
import gudgeon.core.book.Ref;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;

/**
 * All jobs of one store, with a clock, and what has been worked out of their books so far. What is remembered is only ever
 * the fold of what the store says: another process may write to the same store. Safe for several threads.
 */
public final class Workshop implements AutoCloseable {
    private static final int MOST_REMEMBERED = 32;

    private final EntryStore store;
    private final Clock clock;
    private final Supplier<UUID> ids;
    private final Plans plans = new Plans();
    private final Map<String, Job> remembered = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Job> eldest) {
            return size() > MOST_REMEMBERED;
        }
    };

    /**
     * @param clock says when something is written down, and with which offset
     * @param ids makes ids for entries that come without one
     */
    public Workshop(EntryStore store, Clock clock, Supplier<UUID> ids) {
        this.store = store;
        this.clock = clock;
        this.ids = ids;
    }

    /**
     * The workshop of a store file, made when it is not there.
     *
     * @throws gudgeon.app.store.StoreFailed when it cannot be opened
     */
    public static Workshop open(Path file) {
        Clock clock = Clock.systemDefaultZone();
        return new Workshop(SqliteStore.open(file), clock, new EntryIds(clock));
    }

    /** What a person's word led to. */
    public sealed interface Noted {
        /**
         * It is in the book, durably.
         *
         * @param before the job without it
         * @param job the job with it
         * @param entries what was written, one stroke
         */
        record Done(Job before, Job job, List<Entry> entries) implements Noted {
            public Done {
                entries = List.copyOf(entries);
            }

            /** What it changed in the plan. Plans anew, which may take seconds; what was said is in the book already. */
            public PlanChange change() {
                return PlanChange.between(before, job, entries);
            }
        }

        /** Nothing was written. */
        record Refused(List<FieldProblem> problems) implements Noted {
            public Refused {
                problems = List.copyOf(problems);
            }
        }
    }

    EntryStore store() {
        return store;
    }

    /** Ids of all jobs, the one begun last first. */
    public List<String> jobIds() {
        return store.jobs();
    }

    /** A job as it stands now; empty when there is none of that id. */
    public Optional<Job> findJob(String id) {
        Job known;
        synchronized (remembered) {
            known = remembered.get(id);
        }
        JobState state = known == null ? JobState.empty(id) : known.state();
        List<Entry> news = store.entries(id, known == null ? 0 : state.lastSeq());
        if (news.isEmpty()) {
            return Optional.ofNullable(known);
        }
        for (Entry entry : news) {
            state = state.after(entry);
        }
        Job job = new Job(id, state, plans, clock);
        synchronized (remembered) {
            remembered.put(id, job);
        }
        return Optional.of(job);
    }

    /**
     * Writes down what a person says happened.
     *
     * @param id id of the first entry, so that saying it twice is harmless; made here when empty
     * @throws IdTaken when the id stands in the book for something else
     */
    public Noted note(Job job, Deed deed, Who who, Optional<UUID> id) {
        UUID first = id.orElseGet(ids);
        List<Entry> book =
                job.state().history().stream().map(JobState.Told::entry).toList();
        for (int at = 0; at < book.size(); at++) {
            if (book.get(at).id().equals(first)) {
                return again(job, deed, book, at);
            }
        }
        return switch (deed.tell(job)) {
            case Deed.Telling.Wrong wrong -> new Noted.Refused(wrong.problems());
            case Deed.Telling.Facts facts -> written(job, facts, who, first);
        };
    }

    /** It was said before: the same is harmless, and something else is refused. What it came to then is asked of the book as it was then. */
    private Noted again(Job job, Deed deed, List<Entry> book, int at) {
        OffsetDateTime said = book.get(at).stamp().at();
        Clock stopped = Clock.fixed(said.toInstant(), said.getOffset());
        Job then = new Job(job.id(), JobState.of(job.id(), book.subList(0, at)), plans, stopped);
        UUID first = book.get(at).id();
        if (deed.tell(then) instanceof Deed.Telling.Facts facts && at + facts.bodies().size() <= book.size()) {
            List<Entry> stroke = book.subList(at, at + facts.bodies().size());
            if (stroke.stream().map(Entry::body).toList().equals(facts.bodies())
                    && stroke.getFirst().about().equals(facts.about())) {
                return new Noted.Done(job, job, stroke);
            }
        }
        throw new IdTaken(first);
    }

    /** Writes a deed down without working out what it changes. */
    Job write(Job job, Deed deed, Who who) {
        return switch (deed.tell(job)) {
            case Deed.Telling.Wrong wrong -> throw new IllegalArgumentException("refused: " + wrong.problems());
            case Deed.Telling.Facts facts -> {
                store.add(entries(job.id(), facts.bodies(), facts.about(), who(job, who), ids.get()));
                yield findJob(job.id()).orElseThrow();
            }
        };
    }

    private Noted written(Job job, Deed.Telling.Facts facts, Who who, UUID first) {
        List<Entry> entries = entries(job.id(), facts.bodies(), facts.about(), who(job, who), first);
        List<Entry> stored = store.add(entries);
        Job after = findJob(job.id()).orElseThrow();
        return new Noted.Done(job, after, stored);
    }

    private static Who who(Job job, Who who) {
        return who.session().isEmpty()
                ? job.facts().clocked().session().map(open -> who.in(open.id())).orElse(who)
                : who;
    }

    List<Entry> entries(String job, List<Body> bodies, List<Ref> about, Who who, UUID first) {
        Entry.Stamp stamp = new Entry.Stamp(OffsetDateTime.now(clock), who.by(), who.device(), who.session());
        List<Entry> entries = new ArrayList<>();
        for (Body body : bodies) {
            UUID id = EntryIds.following(first, entries.size());
            entries.add(Entry.of(id, job, stamp, body).about(about));
        }
        return entries;
    }

    UUID newId() {
        return ids.get();
    }

    /** An id for a form or a command that is about to be sent. */
    public UUID nextId() {
        return newId();
    }

    /** Now, by this workshop's clock. */
    public OffsetDateTime now() {
        return OffsetDateTime.now(clock);
    }

    @Override
    public void close() {
        store.close();
    }
}
