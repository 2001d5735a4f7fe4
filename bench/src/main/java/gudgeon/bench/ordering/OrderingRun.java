package gudgeon.bench.ordering;

import gudgeon.bench.Cpu;
import gudgeon.core.planning.Sequencer;
import gudgeon.core.planning.SequencingAnswer;
import gudgeon.core.planning.SingleOrder;
import java.util.List;
import java.util.Optional;

/** Solves one problem within so many processor seconds, and has the answer replayed. */
public final class OrderingRun {
    /** States that the search over contexts looks at in about a second. */
    private static final long STATES_PER_SECOND = 10_000;

    private static final long SEED = 1;
    /** The search over contexts cannot be stopped by a clock: with more contexts than this it is not begun. */
    private static final int MOST_CONTEXTS = 33;

    private OrderingRun() {}

    /**
     * @param value cost by the replay
     * @param seconds processor seconds
     * @param method how it was found
     */
    public record Outcome(
            String instance, int nodes, long value, long lowerBound, boolean proved, double seconds, String method) {}

    /**
     * Solves a problem.
     *
     * @throws IllegalStateException when the replay refuses the answer
     */
    public static Outcome solve(SopInstance instance, double seconds) {
        double begun = Cpu.seconds();
        Optional<SharedContexts> shared = SharedContexts.find(instance);
        if (shared.isPresent() && shared.get().members().size() <= MOST_CONTEXTS) {
            Outcome outcome = inContexts(instance, shared.get(), seconds, begun);
            if (outcome.proved()) {
                return outcome;
            }
            Outcome plain = plain(instance, begun + seconds - Cpu.seconds(), begun);
            long bound = Math.max(outcome.lowerBound(), plain.lowerBound());
            Outcome better = outcome.value() <= plain.value() ? outcome : plain;
            return new Outcome(
                    instance.name(),
                    instance.size(),
                    better.value(),
                    bound,
                    better.value() == bound,
                    Cpu.seconds() - begun,
                    better.method());
        }
        return plain(instance, seconds, begun);
    }

    private static Outcome inContexts(SopInstance instance, SharedContexts shared, double seconds, double begun) {
        SequencingAnswer answer =
                Sequencer.best(shared.numbers().problem(), (long) (STATES_PER_SECOND * seconds / 2));
        if (!answer.found()) {
            return new Outcome(
                    instance.name(), instance.size(), Long.MAX_VALUE, answer.lowerBound(), false, 0, "none");
        }
        long value = replayed(instance, shared.order(answer.contexts(), instance.size()), answer.cost());
        return new Outcome(
                instance.name(),
                instance.size(),
                value,
                answer.lowerBound(),
                answer.proven(),
                Cpu.seconds() - begun,
                shared.members().size() - 1 + " contexts");
    }

    private static Outcome plain(SopInstance instance, double seconds, double begun) {
        SingleOrder.Answer answer =
                SingleOrder.best(instance.entries(), instance.precedes(), SEED, Cpu.after(Math.max(0.5, seconds)));
        long value = replayed(instance, answer.order(), answer.cost());
        return new Outcome(
                instance.name(),
                instance.size(),
                value,
                answer.lowerBound(),
                answer.proven(),
                Cpu.seconds() - begun,
                "plain");
    }

    private static long replayed(SopInstance instance, List<Integer> order, long said) {
        OrderReplay.Verdict verdict = OrderReplay.replay(instance, order);
        if (!verdict.sound() || verdict.cost() != said) {
            throw new IllegalStateException(instance.name() + ": the replay refuses the order: " + verdict.faults()
                    + ", it costs " + verdict.cost() + ", the search said " + said);
        }
        return verdict.cost();
    }
}
