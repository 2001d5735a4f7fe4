package gudgeon.app.format;

import gudgeon.core.finding.Observation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Tells the sittings of one test apart where the file does not: figures taken twice count as so many sittings, smallest first, and
 * what was heard then belongs to none of them; an answer of yes and one of no are two. So the order of entry does not matter.
 */
final class Sittings {
    private static final int BY_ITSELF = 50;

    private Sittings() {}

    static List<Observation> told(List<Observation> observations) {
        Map<String, List<Observation.Measured>> figures = new LinkedHashMap<>();
        Map<String, Boolean> answered = new LinkedHashMap<>();
        Map<String, Boolean> both = new LinkedHashMap<>();
        for (Observation each : observations) {
            switch (each) {
                case Observation.Measured measured ->
                    figures.computeIfAbsent(key(measured, ""), any -> new ArrayList<>()).add(measured);
                case Observation.Seen seen -> {
                    Boolean earlier = answered.put(key(seen, seen.finding()), seen.there());
                    if (earlier != null && earlier != seen.there()) {
                        both.put(key(seen, seen.finding()), true);
                    }
                }
            }
        }
        figures.values().forEach(all -> all.sort(Comparator.comparingDouble(Observation.Measured::value)
                .thenComparing(Observation.Measured::toString)));
        List<Observation> told = new ArrayList<>();
        for (Observation each : observations) {
            told.add(switch (each) {
                case Observation.Measured measured -> {
                    List<Observation.Measured> all = figures.getOrDefault(key(measured, ""), List.of());
                    yield all.size() < 2 ? measured : at(measured, measured.sitting() + place(all, measured));
                }
                case Observation.Seen seen -> {
                    boolean twice = figures.getOrDefault(key(seen, ""), List.of()).size() > 1;
                    boolean no = both.containsKey(key(seen, seen.finding())) && !seen.there();
                    yield at(seen, seen.sitting() + (twice ? BY_ITSELF : 0) + (no ? 1 : 0));
                }
            });
        }
        return told;
    }

    /** By identity: two equal figures are two. */
    private static int place(List<Observation.Measured> all, Observation.Measured measured) {
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i) == measured) {
                return i;
            }
        }
        return 0;
    }

    private static String key(Observation each, String finding) {
        return each.test() + "/" + each.cylinder() + "/" + each.sitting() + "/" + finding;
    }

    private static Observation at(Observation.Measured each, int sitting) {
        return new Observation.Measured(
                each.test(), each.figure(), each.cylinder(), each.value(), each.oil(), each.orifice(), each.supply(), sitting);
    }

    private static Observation at(Observation.Seen each, int sitting) {
        return new Observation.Seen(each.test(), each.finding(), each.cylinder(), each.there(), sitting);
    }
}
