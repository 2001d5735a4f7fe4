package gudgeon.bench.checks;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Every function of the check tables that the code computes, by name, one class for each topic. */
final class Functions {
    private static final Map<String, Computation> ALL = all();

    private Functions() {}

    private static Map<String, Computation> all() {
        Map<String, Computation> all = new LinkedHashMap<>();
        GeometryFunctions.into(all);
        MetrologyFunctions.into(all);
        FormFunctions.into(all);
        FastenerFunctions.into(all);
        MatchingFunctions.into(all);
        BearingFunctions.into(all);
        DecidingFunctions.into(all);
        WorldFunctions.into(all);
        LeakFunctions.into(all);
        return all;
    }

    /** The computation of a name. */
    static Optional<Computation> find(String name) {
        return Optional.ofNullable(ALL.get(name));
    }
}
