package gudgeon.core.book;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The state of a job: a pure function of the entries of its book. In whatever order entries come, and however often, the
 * state is the one of their order by {@link Entry#seq}; entries that wait to be stored come last.
 *
 * <p>The facts are worked out when they are first asked for, in one pass over the whole book. Cost: linear in the entries;
 * {@link #after} itself is constant. A state never changes, and may be read by several threads.
 */
public final class JobState {
    private final String job;
    private final @Nullable JobState earlier;
    private final @Nullable Entry added;
    private volatile @Nullable List<Told> history;
    private volatile @Nullable Facts facts;

    private JobState(String job, @Nullable JobState earlier, @Nullable Entry added) {
        this.job = job;
        this.earlier = earlier;
        this.added = added;
    }

    /**
     * One entry of the history.
     *
     * @param counts whether it counts: neither withdrawn nor replaced
     * @param undoneBy the entry that withdrew or replaced it; empty while it counts
     */
    public record Told(Entry entry, boolean counts, Optional<UUID> undoneBy) {}

    /** A job of which nothing is known yet. */
    public static JobState empty(String job) {
        return new JobState(job, null, null);
    }

    /** The state after these entries, given in any order. */
    public static JobState of(String job, Collection<Entry> entries) {
        JobState state = empty(job);
        for (Entry entry : entries) {
            state = state.after(entry);
        }
        return state;
    }

    /**
     * The state after one entry more. An entry that is there already changes nothing.
     *
     * @throws IllegalArgumentException when it belongs to another job
     */
    public JobState after(Entry entry) {
        if (!entry.job().equals(job)) {
            throw new IllegalArgumentException("the entry belongs to the job " + entry.job() + ", not to " + job);
        }
        return new JobState(job, this, entry);
    }

    public String job() {
        return job;
    }

    /** All entries in their order, each once, and whether they count. */
    public List<Told> history() {
        List<Told> known = history;
        if (known == null) {
            known = told(ordered(collected()));
            history = known;
        }
        return known;
    }

    /** What holds now. */
    public Facts facts() {
        Facts known = facts;
        if (known == null) {
            known = new Fold().all(history());
            facts = known;
        }
        return known;
    }

    /** The place in the book of the last stored entry; 0 for an empty book. */
    public long lastSeq() {
        return history().stream().mapToLong(told -> told.entry().seq()).max().orElse(0);
    }

    private List<Entry> collected() {
        List<Entry> newestFirst = new ArrayList<>();
        List<Entry> all = new ArrayList<>();
        JobState at = this;
        while (at != null) {
            List<Told> known = at.history;
            if (known != null) {
                known.forEach(told -> all.add(told.entry()));
                break;
            }
            if (at.added != null) {
                newestFirst.add(at.added);
            }
            at = at.earlier;
        }
        for (int i = newestFirst.size() - 1; i >= 0; i--) {
            all.add(newestFirst.get(i));
        }
        return all;
    }

    private static List<Entry> ordered(List<Entry> entries) {
        Map<UUID, Entry> byId = new LinkedHashMap<>();
        for (Entry entry : entries) {
            byId.merge(entry.id(), entry, (a, b) -> place(b) < place(a) ? b : a);
        }
        List<Entry> ordered = new ArrayList<>(byId.values());
        ordered.sort(Comparator.comparingLong(JobState::place)
                .thenComparing(entry -> entry.stamp().at().toInstant())
                .thenComparing(Entry::id));
        return ordered;
    }

    private static long place(Entry entry) {
        return entry.seq() == 0 ? Long.MAX_VALUE : entry.seq();
    }

    /** An entry counts when no later one that counts withdraws or replaces it: decided from the last one backwards. */
    private static List<Told> told(List<Entry> ordered) {
        Map<UUID, UUID> undone = new HashMap<>();
        Set<UUID> later = new HashSet<>();
        Told[] told = new Told[ordered.size()];
        for (int i = ordered.size() - 1; i >= 0; i--) {
            Entry entry = ordered.get(i);
            UUID by = undone.get(entry.id());
            told[i] = new Told(entry, by == null, Optional.ofNullable(by));
            if (by == null) {
                if (entry.body() instanceof Word.Withdrawn(UUID target, String why) && !later.contains(target)) {
                    undone.putIfAbsent(target, entry.id());
                }
                entry.replaces()
                        .filter(target -> !later.contains(target))
                        .ifPresent(target -> undone.putIfAbsent(target, entry.id()));
            }
            later.add(entry.id());
        }
        return List.of(told);
    }
}
