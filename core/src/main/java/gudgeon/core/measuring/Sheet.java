package gudgeon.core.measuring;

import java.util.List;

/**
 * An answer to readings.
 *
 * @param of what was measured
 * @param judged values and verdicts, in the order in which they are told
 * @param remarks what has to be said beside
 */
public record Sheet(String of, List<Judged> judged, List<Remark> remarks) {
    public Sheet {
        judged = List.copyOf(judged);
        remarks = List.copyOf(remarks);
    }
}
