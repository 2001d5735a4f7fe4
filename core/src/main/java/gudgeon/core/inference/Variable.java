package gudgeon.core.inference;

import java.util.List;
import java.util.Objects;

/**
 * One thing that is in exactly one of several states.
 *
 * @param name its name, unique in a network
 * @param states at least two names, all different
 */
public record Variable(String name, List<String> states) {
    public Variable {
        Objects.requireNonNull(name, "name");
        states = List.copyOf(states);
        if (states.size() < 2 || states.stream().distinct().count() < states.size()) {
            throw new IllegalArgumentException(name + " needs two or more different states, it has " + states);
        }
    }

    /** A variable of the given states. */
    public static Variable of(String name, String... states) {
        return new Variable(name, List.of(states));
    }

    /** A variable that is {@code yes} or {@code no}. */
    public static Variable yesNo(String name) {
        return of(name, "yes", "no");
    }

    /**
     * The place of a state.
     *
     * @throws IllegalArgumentException when there is none of this name
     */
    public int index(String state) {
        int at = states.indexOf(state);
        if (at < 0) {
            throw new IllegalArgumentException(name + " has no state '" + state + "'. Maybe one of " + states + "?");
        }
        return at;
    }
}
