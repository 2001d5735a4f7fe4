package gudgeon.app.desk;

import gudgeon.core.engine.Feature;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is left to measure, in an order that saves changing instruments and walking: what can be got at now first, by instrument,
 * then by part; what is out of reach after it.
 *
 * @param features all that are lengths
 */
public record MeasuringList(List<MeasuredFeature> features) {
    public MeasuringList {
        features = List.copyOf(features);
    }

    /** The list of a job. */
    public static MeasuringList of(Job job, Gauges gauges) {
        return new MeasuringList(job.engine().features().stream()
                .filter(feature -> new FeaturePlaces(feature).isLength())
                .map(feature -> MeasuredFeature.of(job, gauges, feature))
                .toList());
    }

    /** What can be read now and is not read to the end, by the instrument that it is usually read with. */
    public Map<String, List<MeasuredFeature>> now() {
        return byInstrument(features.stream()
                .filter(MeasuringList::open)
                .filter(one -> one.access().reachable())
                .toList());
    }

    /** What cannot be got at yet. */
    public List<MeasuredFeature> later() {
        return features.stream()
                .filter(MeasuringList::open)
                .filter(one -> !one.access().reachable())
                .toList();
    }

    /** What is read, the worst first. */
    public List<MeasuredFeature> done() {
        return features.stream()
                .filter(one -> one.standing() != MeasuredFeature.Standing.NOTHING_READ)
                .sorted(Comparator.comparing(MeasuredFeature::standing))
                .toList();
    }

    private static boolean open(MeasuredFeature one) {
        boolean several = new FeaturePlaces(one.feature()).which().isPresent();
        return one.standing() == MeasuredFeature.Standing.NOTHING_READ
                || (!several && !one.left().isEmpty());
    }

    private static Map<String, List<MeasuredFeature>> byInstrument(List<MeasuredFeature> open) {
        Map<String, List<MeasuredFeature>> groups = new LinkedHashMap<>();
        for (MeasuredFeature one : open) {
            groups.computeIfAbsent(instrument(one.feature()), key -> new ArrayList<>())
                    .add(one);
        }
        groups.values()
                .forEach(group -> group.sort(Comparator.comparing(
                        one -> String.join(" ", one.feature().parts()))));
        return groups;
    }

    private static String instrument(Feature feature) {
        return new FeaturePlaces(feature).usual().word();
    }
}
