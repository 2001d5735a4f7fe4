package gudgeon.core.planning;

import java.util.List;

/**
 * What is known about the best sequence of a problem.
 *
 * @param found whether there is a sequence in hand; when not, cost and contexts say nothing
 * @param cost what the best sequence found costs
 * @param lowerBound no sequence costs less; the largest number when there is none
 * @param contexts where one is, one after another, the start first; in each of them all is done that can be done there
 * @param expanded states looked at
 */
public record SequencingAnswer(boolean found, int cost, int lowerBound, List<Integer> contexts, long expanded) {
    public SequencingAnswer {
        contexts = List.copyOf(contexts);
    }

    /** Whether the sequence is proven to be the best. */
    public boolean proven() {
        return found && cost == lowerBound;
    }
}
