package gudgeon.core.finding;

import java.util.List;

/**
 * What was learned together: the figures of one test at one cylinder with what was heard meanwhile, or the answers of one test.
 *
 * @param test the test
 * @param cylinder from 1; 0 for the engine
 * @param observations at least one
 */
public record Sitting(String test, int cylinder, List<Observation> observations) {
    public Sitting {
        observations = List.copyOf(observations);
        if (observations.isEmpty()) {
            throw new IllegalArgumentException("nothing was learned in a sitting of " + test);
        }
    }
}
