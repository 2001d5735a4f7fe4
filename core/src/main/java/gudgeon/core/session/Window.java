package gudgeon.core.session;

/**
 * When something is at hand, in minutes from the start of the session.
 *
 * @param need what: a helper, a hired tool
 * @param from when it comes; 0 when it is there
 * @param until when it goes
 */
public record Window(String need, double from, double until) {
    public Window {
        if (!(from >= 0 && until >= from)) {
            throw new IllegalArgumentException(
                    "something is at hand from a time until a later one, not from " + from + " until " + until);
        }
    }
}
