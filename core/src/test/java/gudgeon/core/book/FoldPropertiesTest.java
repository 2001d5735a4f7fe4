package gudgeon.core.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What must hold for every book: order of arrival, repetition and double withdrawal change nothing. Follows from docs/book.md. */
class FoldPropertiesTest {
    @Property(tries = 200)
    void theOrderOfArrivalDoesNotMatter(@ForAll long seed, @ForAll @IntRange(min = 0, max = 60) int size) {
        List<Entry> book = Books.random(seed, size);
        List<Entry> mixed = new ArrayList<>(book);
        Collections.shuffle(mixed, new Random(seed));
        assertThat(JobState.of(Books.JOB, mixed).facts())
                .isEqualTo(JobState.of(Books.JOB, book).facts());
        assertThat(JobState.of(Books.JOB, mixed).history())
                .isEqualTo(JobState.of(Books.JOB, book).history());
    }

    @Property(tries = 200)
    void sendingTwiceIsHarmless(@ForAll long seed, @ForAll @IntRange(min = 1, max = 60) int size) {
        List<Entry> book = Books.random(seed, size);
        List<Entry> twice = new ArrayList<>(book);
        twice.addAll(book.subList(0, 1 + new Random(seed).nextInt(size)));
        assertThat(JobState.of(Books.JOB, twice).history())
                .isEqualTo(JobState.of(Books.JOB, book).history());
        assertThat(JobState.of(Books.JOB, twice).facts())
                .isEqualTo(JobState.of(Books.JOB, book).facts());
    }

    @Property(tries = 200)
    void aWithdrawnWithdrawalIsAsIfNothingHadBeenSaid(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 60) int size) {
        List<Entry> book = Books.random(seed, size);
        JobState before = JobState.of(Books.JOB, book);
        List<JobState.Told> standing = before.history().stream()
                .filter(JobState.Told::counts)
                .filter(told -> !(told.entry().body() instanceof Word.Withdrawn))
                .toList();
        if (standing.isEmpty()) {
            return;
        }
        Entry chosen = standing.get(new Random(seed).nextInt(standing.size())).entry();
        Entry withdrawn = Books.entry(size + 1L, new Word.Withdrawn(chosen.id(), ""));
        Entry restored = Books.entry(size + 2L, new Word.Withdrawn(withdrawn.id(), ""));
        JobState without = before.after(withdrawn);
        assertThat(without.history().stream()
                        .filter(told -> told.entry().equals(chosen))
                        .findFirst())
                .hasValueSatisfying(told -> assertThat(told.counts()).isFalse());
        assertThat(timeless(without.after(restored).facts())).isEqualTo(timeless(before.facts()));
    }

    /** All but the time of the last entry, which moves with every entry. */
    private static List<Object> timeless(Facts facts) {
        return List.of(
                facts.setting(),
                facts.clocked().minutes(),
                facts.stripped(),
                facts.findings(),
                facts.kept(),
                facts.ledger(),
                facts.built(),
                facts.contradictions());
    }

    @Property(tries = 50)
    void oneByOneIsTheSameAsAllAtOnce(@ForAll long seed, @ForAll @IntRange(min = 1, max = 40) int size) {
        JobState state = JobState.empty(Books.JOB);
        for (Entry entry : Books.random(seed, size)) {
            state = state.after(entry);
            assertThat(state.facts())
                    .isNotNull(); // asked for at every step, so that nothing remembered leaks into the next
        }
        assertThat(state.facts())
                .isEqualTo(JobState.of(Books.JOB, Books.random(seed, size)).facts());
    }
}
