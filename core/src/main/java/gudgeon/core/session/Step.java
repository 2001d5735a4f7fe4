package gudgeon.core.session;

import gudgeon.core.forecast.Nominal;
import java.util.List;

/**
 * One step of a session, in the order in which it is done.
 *
 * @param id of the operation
 * @param nominal what the file says it takes, going there and taking up tools included
 * @param needs what must be at hand only while it is done: a helper, a hired tool
 * @param after how it would be left after it
 */
public record Step(String id, Nominal nominal, List<String> needs, Stand after) {
    public Step {
        needs = List.copyOf(needs);
    }
}
