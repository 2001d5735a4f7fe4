package gudgeon.core.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What entries come to, case by case; the cases are those of docs/book.md. */
class JobStateTest {
    private static Facts facts(Body... bodies) {
        return JobState.of(Books.JOB, Books.book(bodies)).facts();
    }

    private static List<Facts.Contradiction.Sort> contradictions(Body... bodies) {
        return facts(bodies).contradictions().stream()
                .map(Facts.Contradiction::sort)
                .toList();
    }

    private static <K, V> V at(java.util.Map<K, V> map, K key) {
        return java.util.Objects.requireNonNull(map.get(key), () -> "nothing at " + key);
    }

    private static Body done(String joint) {
        return new Strip.OperationDone(joint, false, 3);
    }

    @Test
    void whatIsDoneIsOpenUntilItIsPutBack() {
        assertThat(facts(done("a"), done("b")).stripped().open()).containsExactly("a", "b");
        Facts back = facts(done("a"), done("b"), new Strip.PutBack("a"));
        assertThat(back.stripped().open()).containsExactly("b");
        assertThat(back.stripped().acts()).extracting(Facts.Act::operation).containsExactly("b");
    }

    @Test
    void aJointAlreadyOutIsAContradictionAndKept() {
        assertThat(contradictions(done("a"), done("a"))).containsExactly(Facts.Contradiction.Sort.ALREADY_OUT);
        assertThat(contradictions(new Strip.PutBack("a"))).containsExactly(Facts.Contradiction.Sort.NOT_OUT);
    }

    @Test
    void twoCountsAreBothKeptAndTheirDifferenceIsShown() {
        Facts facts = facts(Strip.AsFound.counted("a", 4, "1"), Strip.AsFound.counted("a", 3, ""));
        assertThat(at(facts.findings().joints(), "a").counts()).containsExactly(4, 3);
        assertThat(at(facts.findings().joints(), "a").count()).isEqualTo(3);
        assertThat(facts.contradictions())
                .extracting(Facts.Contradiction::sort)
                .containsExactly(Facts.Contradiction.Sort.COUNTS_DIFFER);
    }

    @Test
    void whatRestsOnSomethingWithdrawnIsKeptAndShown() {
        List<Facts.Contradiction.Sort> found = contradictions(
                done("a"), Strip.AsFound.counted("a", 4, "1"), new Word.Withdrawn(Books.id(1), "wrong joint"));
        assertThat(found).containsExactly(Facts.Contradiction.Sort.RESTS_ON_WITHDRAWN);
    }

    @Test
    void fastenersOfAJointAreInOneBagOnly() {
        Facts facts = facts(Strip.AsFound.counted("a", 4, "1"), Strip.AsFound.counted("a", 4, "2"));
        assertThat(at(facts.kept().bags(), "1").joints()).isEmpty();
        assertThat(at(facts.kept().bags(), "2").joints()).containsEntry("a", 4);
    }

    @Test
    void aTorqueStageBeginsAgainAndAnAngleStaysWhereItIs() {
        Facts facts = facts(
                new Build.StageReached("a", 1, List.of("a/1", "a/2")),
                new Build.Interrupted("a", 1, true),
                new Build.AngleTurned("a", 2, List.of("a/1")),
                new Build.Interrupted("a", 2, true));
        assertThat(at(at(facts.built().joints(), "a").stages(), 1).reached()).isEmpty();
        assertThat(at(at(facts.built().joints(), "a").stages(), 2).turned()).containsExactly("a/1");
    }

    @Test
    void anAngleTurnedTwiceIsAContradiction() {
        assertThat(contradictions(
                        new Build.AngleTurned("a", 2, List.of("a/1")), new Build.AngleTurned("a", 2, List.of("a/1"))))
                .containsExactly(Facts.Contradiction.Sort.TURNED_TWICE);
    }

    @Test
    void whenAllAreRenewedTheJointIsOpenAgain() {
        Facts facts = facts(
                done("a"),
                new Build.StepBuilt("a/snug", List.of(), 0),
                new Build.AngleTurned("a", 2, List.of("a/1")),
                new Build.StartedAgain("a", "not certain"));
        assertThat(facts.stripped().open()).containsExactly("a");
        assertThat(facts.built().steps()).isEmpty();
        assertThat(at(facts.built().joints(), "a").stages()).isEmpty();
    }

    @Test
    void ragsMustBalance() {
        Facts one = facts(new Keeping.RagIn("bore", 2), new Keeping.RagOut("bore", 1));
        assertThat(at(one.ledger().rags(), "bore").left()).isEqualTo(1);
        assertThat(contradictions(new Keeping.RagIn("bore", 1), new Keeping.RagOut("bore", 2)))
                .containsExactly(Facts.Contradiction.Sort.MORE_OUT_THAN_IN);
    }

    @Test
    void aReplacedEntryNoLongerCounts() {
        List<Entry> book = Books.book(Strip.AsFound.counted("a", 4, "1"));
        Entry better = Books.entry(2, Strip.AsFound.counted("a", 3, "1")).replacing(Books.id(1));
        JobState state = JobState.of(Books.JOB, book).after(better);
        assertThat(at(state.facts().findings().joints(), "a").counts()).containsExactly(3);
        assertThat(state.facts().contradictions()).isEmpty();
        assertThat(state.history().getFirst().undoneBy()).contains(Books.id(2));
    }

    @Test
    void aLaterOneCannotBeWithdrawnBeforeItWasSaid() {
        assertThat(contradictions(new Word.Withdrawn(Books.id(2), ""), done("a")))
                .containsExactly(Facts.Contradiction.Sort.WITHDRAWS_NOTHING);
        assertThat(facts(new Word.Withdrawn(Books.id(2), ""), done("a"))
                        .stripped()
                        .open())
                .containsExactly("a");
    }

    @Test
    void anEntryOfAnotherJobIsRefused() {
        Entry other = Entry.of(Books.id(1), "other", Books.entry(1, done("a")).stamp(), done("a"));
        assertThatThrownBy(() -> JobState.empty(Books.JOB).after(other)).hasMessageContaining("other");
    }

    @Test
    void everyLadderHasAWayAndEveryRungIsFound() {
        for (Fault.Kind kind : Fault.Kind.values()) {
            assertThat(RescueLadder.of(kind).rungs()).isNotEmpty().doesNotHaveDuplicates();
            RescueLadder.of(kind)
                    .rungs()
                    .forEach(rung -> assertThat(RescueLadder.find(rung.id())).contains(rung));
        }
    }

    /**
     * Twice the entries take about twice the time, in a book that spreads over many joints and bags as in one that does not. Time
     * of this thread alone; the bound leaves room for a compiler that has not warmed up. docs/decisions/0010 says what was measured.
     */
    @ParameterizedTest
    @ValueSource(ints = {5, 300})
    void theFoldIsLinear(int joints) {
        long small = best(Books.random(7, 5_000, joints));
        long large = best(Books.random(7, 20_000, joints));
        assertThat(large).as("4 times the entries, %d ns and %d ns", small, large).isLessThan(16 * small + 20_000_000);
        assertThat(large).as("20,000 entries").isLessThan(400_000_000);
    }

    private static long best(List<Entry> book) {
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        long best = Long.MAX_VALUE;
        for (int round = 0; round < 12; round++) {
            long start = clock.getCurrentThreadCpuTime();
            Facts facts = JobState.of(Books.JOB, book).facts();
            best = Math.min(best, clock.getCurrentThreadCpuTime() - start);
            assertThat(facts.contradictions()).isNotEmpty();
        }
        return best;
    }
}
