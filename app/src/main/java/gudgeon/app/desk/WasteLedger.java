package gudgeon.app.desk;

import gudgeon.core.book.Entry;
import gudgeon.core.book.Fluid;
import gudgeon.core.book.JobState;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Where what was drained went: by circuit and place, in the order of the book. */
public final class WasteLedger {
    private WasteLedger() {}

    /**
     * Fluid that went to one place.
     *
     * @param circuit id
     * @param to can, collection point ...; empty when nobody said
     * @param litres measured; 0 when it was not measured
     * @param unmeasured how many drainings were not measured
     */
    public record Gone(String circuit, String to, double litres, int unmeasured) {}

    /** The ledger of a job. */
    public static List<Gone> of(Job job) {
        Map<List<String>, Gone> gone = new LinkedHashMap<>();
        job.state().history().stream()
                .filter(JobState.Told::counts)
                .map(JobState.Told::entry)
                .map(Entry::body)
                .filter(Fluid.Drained.class::isInstance)
                .map(Fluid.Drained.class::cast)
                .forEach(drained -> gone.merge(
                        List.of(drained.circuit(), drained.to().strip()),
                        new Gone(
                                drained.circuit(),
                                drained.to().strip(),
                                drained.litres(),
                                drained.litres() > 0 ? 0 : 1),
                        (a, b) -> new Gone(
                                a.circuit(), a.to(), a.litres() + b.litres(), a.unmeasured() + b.unmeasured())));
        return new ArrayList<>(gone.values());
    }
}
