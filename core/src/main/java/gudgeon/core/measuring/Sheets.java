package gudgeon.core.measuring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Answers to readings of one kind of feature each: values, verdicts, remarks. */
public final class Sheets {
    private static final int LONG_AGO_DAYS = 365;
    private static final double TELLING_MM = 0.0005;
    private static final long SEED = 20;

    private Sheets() {}

    /** One size, gap, height or clearance, read once or several times. */
    public static Sheet reading(String of, Derived.Trait trait, Reading.Worth worth, Judging judging) {
        Derived derived = new Derived(trait, worth.estimate(), List.of(worth.place()));
        List<Remark> remarks = new ArrayList<>(remarksOn(List.of(worth)));
        List<Judged> judged = judging.of(
                of,
                derived,
                worth.reading().shown_mm().size(),
                OptionalDouble.of(worth.reading().instrument().maximumError_mm()));
        remarks.addAll(readAgain(judged));
        return new Sheet(of, judged, remarks);
    }

    /**
     * A bore or journal and its readings.
     *
     * @param name bore 3, main 2
     * @param survey what was read
     * @param unworn its size where it does not wear, or when new; empty when nobody knows
     */
    public record Round(String name, SizeSurvey survey, Optional<Estimate> unworn) {}

    /**
     * What to cut to.
     *
     * @param nominal_mm the standard size
     * @param steps_mm over- or undersizes on offer
     * @param allowance_mm what finishing takes off
     * @param least_mm smallest size of a ground journal; for bores of no meaning
     */
    public record CutTo(
            double nominal_mm, List<Double> steps_mm, double allowance_mm, Rework.Centring centring, double least_mm) {
        public CutTo {
            steps_mm = List.copyOf(steps_mm);
        }
    }

    /** Bores: size, taper, out-of-round, wear, each against its limit, and the common oversize. */
    public static Sheet bores(String of, List<Round> bores, Judging judging, Optional<CutTo> cut) {
        return rounds(of, bores, judging, cut, true);
    }

    /** Journals: the same, worn the other way. */
    public static Sheet journals(String of, List<Round> journals, Judging judging, Optional<CutTo> cut) {
        return rounds(of, journals, judging, cut, false);
    }

    private static Sheet rounds(String of, List<Round> rounds, Judging judging, Optional<CutTo> cut, boolean bore) {
        List<Judged> judged = new ArrayList<>();
        List<Remark> remarks = new ArrayList<>();
        List<Reading.Worth> worths = rounds.stream()
                .flatMap(round -> round.survey().readings().stream())
                .map(SizeReading::worth)
                .toList();
        OptionalDouble error = oneInstrument(worths);
        for (Round round : rounds) {
            int repeats = round.survey().readings().stream()
                    .mapToInt(reading -> reading.worth().reading().shown_mm().size())
                    .min()
                    .orElse(1);
            for (Derived derived : traits(round, bore)) {
                judged.addAll(judging.of(round.name(), derived, repeats, error));
            }
            remarks.addAll(drawn(round.survey()));
        }
        remarks.addAll(0, remarksOn(worths));
        remarks.add(new Remark.TwoPointOnly());
        remarks.addAll(readAgain(judged));
        cut.ifPresent(wish -> remarks.add(
                new Remark.CommonSize(common(rounds, wish, bore), wish.centring(), bore, wish.nominal_mm())));
        return new Sheet(of, judged, remarks);
    }

    private static List<Derived> traits(Round round, boolean bore) {
        List<Derived> traits = new ArrayList<>();
        SizeSurvey survey = round.survey();
        traits.add(bore ? survey.largest() : survey.smallest());
        traits.add(bore ? survey.smallest() : survey.largest());
        traits.add(survey.mean());
        survey.taper().ifPresent(traits::add);
        survey.outOfRound().ifPresent(traits::add);
        round.unworn().ifPresent(unworn -> traits.add(bore ? survey.boreWear(unworn) : survey.journalWear(unworn)));
        return traits;
    }

    private static List<Remark> drawn(SizeSurvey survey) {
        List<Remark> remarks = new ArrayList<>();
        for (Optional<Derived> trait : List.of(survey.taper(), survey.outOfRound())) {
            trait.ifPresent(derived -> {
                MonteCarlo drawn = survey.drawn(derived.trait(), SEED);
                if (!drawn.agreesWith(derived.estimate())) {
                    remarks.add(new Remark.FirstOrderFails(derived.trait(), drawn));
                }
            });
        }
        return remarks;
    }

    private static Rework.Common common(List<Round> rounds, CutTo cut, boolean bore) {
        List<Rework.Worn> worn = rounds.stream()
                .map(round -> new Rework.Worn(
                        round.name(),
                        bore ? round.survey().largest() : round.survey().smallest(),
                        round.unworn().orElse(Estimate.exactly(cut.nominal_mm()))))
                .toList();
        return bore
                ? Rework.oversize(worn, cut.nominal_mm(), cut.steps_mm(), cut.allowance_mm(), cut.centring())
                : Rework.undersize(
                        worn, cut.nominal_mm(), cut.steps_mm(), cut.allowance_mm(), cut.centring(), cut.least_mm());
    }

    /** A face from heights: flatness against its limit, and the skim that cleans it. */
    public static Sheet face(
            String of,
            FaceSurvey survey,
            Instrument dial,
            Repeatability repeats,
            double allowance_mm,
            Judging judging) {
        List<Remark> remarks = new ArrayList<>();
        if (!survey.saysSomething()) {
            remarks.add(new Remark.TooFewPlaces(survey.points().size()));
            return new Sheet(of, List.of(), remarks);
        }
        if (survey.lineOnly()) {
            remarks.add(new Remark.LineOnly());
        }
        Derived flatness = survey.flatness(dial, repeats);
        List<Judged> judged = new ArrayList<>(judging.of(of, flatness, 1, OptionalDouble.of(dial.maximumError_mm())));
        judged.add(new Judged(of, FaceSurvey.skim(flatness, allowance_mm), Optional.empty()));
        remarks.addAll(readAgain(judged));
        return new Sheet(of, judged, remarks);
    }

    /** A clearance by difference, by strip, or both and then compared. */
    public static Sheet clearance(
            String of,
            Optional<Derived> difference,
            Optional<Derived> strip,
            List<Reading.Worth> read,
            Judging judging) {
        List<Judged> judged = new ArrayList<>();
        List<Remark> remarks = new ArrayList<>(remarksOn(read));
        difference.ifPresent(derived -> judged.addAll(judging.of(of, derived, 1, oneInstrument(read))));
        strip.ifPresent(derived -> judged.addAll(judging.of(of, derived, 1, OptionalDouble.empty())));
        if (difference.isPresent() && strip.isPresent()) {
            remarks.add(new Remark.TwoWays(
                    of,
                    difference.get().value(),
                    strip.get().value(),
                    difference.get().estimate().normalisedError(strip.get().estimate())));
        }
        remarks.addAll(readAgain(judged));
        return new Sheet(of, judged, remarks);
    }

    /**
     * Wear brought forward: the trait now and at the next opening, against the same limits.
     *
     * @param then what the second is called
     */
    public static Sheet wear(
            String of, String then, Derived.Trait trait, WearRate rate, double further, Judging judging) {
        List<Judged> judged = new ArrayList<>();
        judged.addAll(judging.of(of, new Derived(trait, rate.now(), List.of()), 1, OptionalDouble.empty()));
        judged.addAll(judging.of(then, new Derived(trait, rate.after(further), List.of()), 1, OptionalDouble.empty()));
        Estimate per = rate.rate().times(1000);
        return new Sheet(of, judged, List.of(new Remark.Rate(per.value(), per.expanded())));
    }

    /** What the readings themselves give cause to say. */
    public static List<Remark> remarksOn(List<Reading.Worth> worths) {
        List<Remark> remarks = new ArrayList<>();
        worths.stream()
                .filter(worth -> Math.abs(worth.warmth_mm()) >= TELLING_MM)
                .findFirst()
                .ifPresent(worth -> remarks.add(new Remark.Warmth(
                        worth.place(),
                        worth.warmth_mm(),
                        worth.reading().conditions().part_C(),
                        worth.reading().conditions().standard_C())));
        if (worths.stream().anyMatch(worth -> worth.reading().conditions().isUnknown())) {
            remarks.add(new Remark.WarmthUnknown());
        }
        Set<String> told = new TreeSet<>();
        for (Reading.Worth worth : worths) {
            Instrument instrument = worth.reading().instrument();
            if (told.add(instrument.id())) {
                if (instrument.offset_mm() != 0) {
                    remarks.add(new Remark.Offset(instrument.id(), worth.offset_mm()));
                }
                instrument
                        .check()
                        .filter(check -> check.daysAgo() > LONG_AGO_DAYS)
                        .ifPresent(check -> remarks.add(new Remark.CheckLongAgo(instrument.id(), check.daysAgo())));
            }
            if (!instrument.reaches(worth.mean_mm())) {
                remarks.add(new Remark.OutOfRange(instrument.id(), worth.mean_mm(), instrument.range_mm()));
            }
        }
        worths.stream()
                .flatMap(worth -> worth.estimate().budget().contributions().stream())
                .filter(line -> line.source().kind() == Source.Kind.REPEATS_ASSUMED)
                .findFirst()
                .ifPresent(line -> remarks.add(new Remark.RepeatsAssumed(line.standardUncertainty())));
        return remarks;
    }

    private static List<Remark> readAgain(List<Judged> judged) {
        return judged.stream()
                .filter(one -> one.verdict()
                        .filter(verdict -> verdict.outcome() == DecisionRule.Outcome.TOO_CLOSE)
                        .isPresent())
                .filter(one -> one.derived().readAgain().isPresent())
                .map(one -> (Remark) new Remark.ReadAgain(
                        one.of(),
                        one.derived().trait(),
                        one.derived().readAgain().orElse("")))
                .distinct()
                .toList();
    }

    private static OptionalDouble oneInstrument(List<Reading.Worth> worths) {
        Set<String> ids =
                worths.stream().map(worth -> worth.reading().instrument().id()).collect(Collectors.toSet());
        return ids.size() == 1
                ? OptionalDouble.of(worths.getFirst().reading().instrument().maximumError_mm())
                : OptionalDouble.empty();
    }
}
