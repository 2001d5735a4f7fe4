package gudgeon.app.desk;

import gudgeon.app.format.Amount;
import gudgeon.app.format.QuantityKind;
import gudgeon.core.book.Facts;
import gudgeon.core.engine.Feature;
import gudgeon.core.engine.Literal;
import gudgeon.core.measuring.Conditions;
import gudgeon.core.measuring.DecisionRule;
import gudgeon.core.measuring.Derived;
import gudgeon.core.measuring.Expanding;
import gudgeon.core.measuring.FacePoint;
import gudgeon.core.measuring.FaceSurvey;
import gudgeon.core.measuring.Instrument;
import gudgeon.core.measuring.Judged;
import gudgeon.core.measuring.Judging;
import gudgeon.core.measuring.Limits;
import gudgeon.core.measuring.Material;
import gudgeon.core.measuring.Reading;
import gudgeon.core.measuring.Remark;
import gudgeon.core.measuring.Sheet;
import gudgeon.core.measuring.Sheets;
import gudgeon.core.measuring.SizeReading;
import gudgeon.core.measuring.SizeSurvey;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * How a feature of a job stands: what was read, what is left to read, and what that comes to. Readings of a part that was renewed
 * since do not count for the new item.
 *
 * @param feature the feature
 * @param read by place, what was read there and what it is worth, in the order of the book
 * @param left places of the file where nothing was read yet
 * @param sheet values and verdicts; empty when nothing was read
 * @param face the map of a face that was read by coordinates; empty for all others
 * @param access whether it can be got at now, and which of its parts were never cleaned
 */
public record MeasuredFeature(
        Feature feature,
        Map<String, Reading.Worth> read,
        List<String> left,
        Optional<Sheet> sheet,
        Optional<FaceSurvey> face,
        Access access) {
    private static final double ALLOWANCE_MM = 0.02;
    private static final int FOR_A_FACE = 3;

    public MeasuredFeature {
        read = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(read));
        left = List.copyOf(left);
    }

    /**
     * Getting at it.
     *
     * @param reachable whether what must be out of the way is
     * @param uncleaned its parts that nobody cleaned, or whose cloth did not stay white
     * @param readDirty whether a reading that counts was taken before
     */
    public record Access(boolean reachable, List<String> uncleaned, boolean readDirty) {
        public Access {
            uncleaned = List.copyOf(uncleaned);
        }
    }

    /** How it stands, the worst first. */
    public enum Standing {
        BEYOND,
        TOO_CLOSE,
        WITHIN,
        /** Read, and nothing to hold it against. */
        READ,
        NOTHING_READ
    }

    /** The worst of its verdicts. */
    public Standing standing() {
        if (sheet.isEmpty()) {
            return Standing.NOTHING_READ;
        }
        return sheet.get().judged().stream()
                .flatMap(judged -> judged.verdict().stream())
                .map(verdict -> switch (verdict.outcome()) {
                    case BEYOND -> Standing.BEYOND;
                    case TOO_CLOSE -> Standing.TOO_CLOSE;
                    case WITHIN -> Standing.WITHIN;
                })
                .min(Standing::compareTo)
                .orElse(Standing.READ);
    }

    /** Whether a verdict holds only if a typical limit does. */
    public boolean provisional() {
        return sheet.stream()
                .flatMap(one -> one.judged().stream())
                .flatMap(judged -> judged.verdict().stream())
                .anyMatch(verdict -> verdict.provisional());
    }

    /** How a feature of a job stands. */
    public static MeasuredFeature of(Job job, Gauges gauges, Feature feature) {
        return new Reader(job, gauges, feature).stands();
    }

    /** One feature while it is read out of the book. */
    private static final class Reader {
        private final Job job;
        private final Gauges gauges;
        private final Feature feature;
        private final FeaturePlaces places;

        Reader(Job job, Gauges gauges, Feature feature) {
            this.job = job;
            this.gauges = gauges;
            this.feature = feature;
            this.places = new FeaturePlaces(feature);
        }

        MeasuredFeature stands() {
            Facts.Gauged gauged = job.facts().gauged();
            Map<String, List<Facts.ReadingAt>> byPlace = new LinkedHashMap<>();
            int from = feature.parts().stream()
                    .mapToInt(part -> gauged.renewed().getOrDefault(part, 0))
                    .max()
                    .orElse(0);
            int firstRead = Integer.MAX_VALUE;
            for (int i = from; i < gauged.readings().size(); i++) {
                Facts.ReadingAt reading = gauged.readings().get(i);
                if (reading.said().feature().equals(feature.id())) {
                    firstRead = Math.min(firstRead, i);
                    byPlace.computeIfAbsent(reading.said().place(), key -> new ArrayList<>())
                            .add(reading);
                }
            }
            Map<String, Reading.Worth> read = new LinkedHashMap<>();
            byPlace.forEach((place, readings) -> read.put(place, worth(place, readings)));
            List<String> left = places.all().stream()
                    .filter(place -> places.which().isPresent() || !read.containsKey(place))
                    .toList();
            Optional<FaceSurvey> face = face(read);
            return new MeasuredFeature(
                    feature,
                    read,
                    face.isPresent() ? List.of() : left,
                    read.isEmpty() ? Optional.empty() : Optional.of(sheet(read, face)),
                    face,
                    access(gauged, firstRead));
        }

        private Access access(Facts.Gauged gauged, int firstRead) {
            Set<String> away = job.facts().stripped().away().keySet();
            List<String> aside = job.facts().stripped().aside();
            List<String> open = job.facts().stripped().open();
            boolean reachable = feature.access().holds(literal -> switch (literal) {
                case Literal.PartAway part -> away.contains(part.id()) || aside.contains(part.id());
                case Literal.JointUndone joint -> open.contains(joint.id());
            });
            List<String> uncleaned = feature.parts().stream()
                    .filter(part -> Optional.ofNullable(gauged.cleaned().get(part))
                            .filter(one -> one.said().clothWhite() && one.said().passagesClear())
                            .isEmpty())
                    .toList();
            boolean dirty = firstRead != Integer.MAX_VALUE
                    && feature.parts().stream()
                            .anyMatch(part -> uncleaned.contains(part)
                                    || Optional.ofNullable(gauged.cleaned().get(part))
                                            .filter(one -> firstRead < one.readingsBefore())
                                            .isPresent());
            return new Access(reachable, uncleaned, dirty);
        }

        /** All readings of a place with the instrument of the last one; repeats with another instrument begin anew. */
        private Reading.Worth worth(String place, List<Facts.ReadingAt> readings) {
            Facts.ReadingAt last = readings.getLast();
            List<Double> shown = readings.stream()
                    .filter(one -> one.said().instrument().equals(last.said().instrument()))
                    .flatMap(one -> one.said().shown_mm().stream())
                    .toList();
            Instrument instrument = gauges.find(last.said().instrument())
                    .orElseGet(() -> places.usual().typical());
            return new Reading(place, shown, instrument, conditions(last.said().warmth_C()))
                    .worth(gauges.repeatability(instrument));
        }

        private Conditions conditions(List<Double> warmth_C) {
            Expanding part = feature.parts().stream()
                    .findFirst()
                    .flatMap(job.engine()::findPart)
                    .flatMap(one -> Material.find(one.care().material()))
                    .map(Expanding::of)
                    .orElseGet(Expanding::unknown);
            return warmth_C.isEmpty()
                    ? Conditions.unknown(part)
                    : new Conditions(warmth_C.getFirst(), warmth_C.getLast(), 1, 1, part);
        }

        private Optional<FaceSurvey> face(Map<String, Reading.Worth> read) {
            if (places.trait() != Derived.Trait.FLATNESS) {
                return Optional.empty();
            }
            List<FacePoint> points = new ArrayList<>();
            read.forEach((place, worth) -> FeaturePlaces.coordinates(place)
                    .ifPresent(at -> points.add(new FacePoint(at[0], at[1], worth.mean_mm()))));
            return points.size() > FOR_A_FACE && points.size() == read.size()
                    ? Optional.of(FaceSurvey.of(points))
                    : Optional.empty();
        }

        private Sheet sheet(Map<String, Reading.Worth> read, Optional<FaceSurvey> face) {
            if (face.isPresent()) {
                Instrument dial = read.values().iterator().next().reading().instrument();
                return Sheets.face(
                        feature.name(),
                        face.get(),
                        dial,
                        gauges.repeatability(dial),
                        ALLOWANCE_MM,
                        judging(Derived.Trait.FLATNESS));
            }
            if (places.isBore() || places.isShaft()) {
                List<Sheets.Round> rounds = rounds(read);
                Judging judging = judging(places.isBore() ? Derived.Trait.LARGEST : Derived.Trait.SMALLEST);
                return places.isBore()
                        ? Sheets.bores(feature.name(), rounds, judging, Optional.empty())
                        : Sheets.journals(feature.name(), rounds, judging, Optional.empty());
            }
            Judging judging = judging(places.trait());
            List<Judged> judged = new ArrayList<>();
            Set<Remark> remarks = new LinkedHashSet<>();
            read.forEach((place, worth) -> {
                Sheet one = Sheets.reading(place, places.trait(), worth, judging);
                judged.addAll(one.judged());
                remarks.addAll(one.remarks());
            });
            return new Sheet(feature.name(), judged, List.copyOf(remarks));
        }

        private List<Sheets.Round> rounds(Map<String, Reading.Worth> read) {
            Map<String, List<SizeReading>> byRound = new LinkedHashMap<>();
            Map<String, Double> depths = new LinkedHashMap<>();
            read.forEach((place, worth) -> {
                List<String> words = places.words(place);
                String direction = words.size() > 1
                        ? words.getLast()
                        : feature.take().containsKey("directions") ? words.getFirst() : "";
                String depth = words.size() > 1 || !feature.take().containsKey("directions") ? words.getFirst() : "";
                String round = places.round(place);
                byRound.computeIfAbsent(round.isEmpty() ? feature.name() : round, key -> new ArrayList<>())
                        .add(new SizeReading(along(depth, depths), direction, worth));
            });
            List<Sheets.Round> rounds = new ArrayList<>();
            byRound.forEach(
                    (name, readings) -> rounds.add(new Sheets.Round(name, new SizeSurvey(readings), Optional.empty())));
            return rounds;
        }

        /** The depth of a place in mm; places in words are numbered, so that they only differ. */
        private static double along(String depth, Map<String, Double> depths) {
            try {
                return Amount.parse(depth, QuantityKind.LENGTH, Locale.ROOT).value();
            } catch (IllegalArgumentException e) {
                return depths.computeIfAbsent(depth, key -> (double) depths.size());
            }
        }

        private Judging judging(Derived.Trait size) {
            boolean confirmed = job.facts().setting().confirmed().contains(feature.id());
            DecisionRule rule = job.facts().gauged().edition() == 1998
                    ? DecisionRule.GUARD_BAND_1998
                    : DecisionRule.PROBABILITY_2017;
            List<Judging.OfTrait> limits = new ArrayList<>();
            for (Feature.Limit limit : feature.limits()) {
                if (!limit.name().equals("new")) {
                    Derived.Trait trait = switch (limit.name()) {
                        case "taper" -> Derived.Trait.TAPER;
                        case "out-of-round" -> Derived.Trait.OUT_OF_ROUND;
                        default -> size;
                    };
                    limits.add(new Judging.OfTrait(
                            trait,
                            new Limits(
                                    limit.name(),
                                    bound(limit.min()),
                                    bound(limit.max()),
                                    !limit.typical() || confirmed)));
                }
            }
            return new Judging(rule, limits);
        }

        private static OptionalDouble bound(Optional<gudgeon.core.quantity.Length> length) {
            return length.isPresent() ? OptionalDouble.of(length.get().millimetres()) : OptionalDouble.empty();
        }
    }
}
