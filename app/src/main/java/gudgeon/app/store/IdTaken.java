package gudgeon.app.store;

import java.util.UUID;

/** An id came again with another body: two different things cannot be one entry. */
public final class IdTaken extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    /** @param id the id that came again */
    public IdTaken(UUID id) {
        super("the id " + id
                + " stands in the book already for something else. Maybe the page was kept open and sent twice?");
    }
}
