package gudgeon.app.document;

import gudgeon.core.bolting.Adaptor;
import gudgeon.core.bolting.Friction;
import gudgeon.core.bolting.MetricThread;
import gudgeon.core.bolting.PatternCheck;
import gudgeon.core.bolting.Preload;
import gudgeon.core.bolting.PropertyClass;
import gudgeon.core.bolting.StretchCheck;
import gudgeon.core.bolting.ThreadTolerance;
import gudgeon.core.bolting.Tightening;
import gudgeon.core.bolting.Wrench;
import gudgeon.core.planning.Resume;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Answers about bolts in words and figures, for the screen of a terminal and for pages. */
public final class BoltWords {
    private BoltWords() {}

    /** A number with so many decimals. */
    static String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    static String mm(double value) {
        return number(value, 3) + " mm";
    }

    static String kN(double newtons) {
        return number(newtons / 1000, 1) + " kN";
    }

    static String percent(double share) {
        return number(share * 100, 0) + " %";
    }

    /** Sizes, strength and limits of a thread. */
    public static List<AnswerRow> thread(
            MetricThread thread, Optional<PropertyClass> grade, Optional<ThreadTolerance.Limits> limits) {
        List<AnswerRow> rows = new ArrayList<>();
        rows.add(new AnswerRow("pitch diameter", mm(thread.pitchDiameter_mm())));
        rows.add(new AnswerRow("minor diameter of the nut", mm(thread.minorDiameter_mm())));
        rows.add(new AnswerRow("root diameter of the bolt", mm(thread.rootDiameter_mm())));
        rows.add(new AnswerRow("lead angle", number(thread.leadAngle_deg(), 2) + "°"));
        rows.add(new AnswerRow("stress area", number(thread.stressArea_mm2(), 2) + " mm²"));
        grade.ifPresent(known -> {
            double d_mm = thread.diameter_mm();
            rows.add(new AnswerRow("class", known.written()));
            rows.add(new AnswerRow("yield, at least", number(known.yield_MPa(d_mm), 0) + " MPa"));
            rows.add(new AnswerRow("tensile strength, at least", number(known.tensileStrength_MPa(d_mm), 0) + " MPa"));
            rows.add(new AnswerRow("proof load", kN(known.proofLoad_N(thread))));
            rows.add(new AnswerRow("breaks at, at least", kN(known.ultimateLoad_N(thread))));
        });
        limits.ifPresent(sizes -> {
            rows.add(new AnswerRow(
                    "outside, from to", number(sizes.majorMin_mm(), 3) + " to " + mm(sizes.majorMax_mm())));
            rows.add(
                    new AnswerRow("pitch, from to", number(sizes.pitchMin_mm(), 3) + " to " + mm(sizes.pitchMax_mm())));
        });
        return rows;
    }

    /** Friction in words: the number, or two when thread and head differ. */
    public static String friction(Friction friction) {
        return Math.abs(friction.thread() - friction.head()) < 1e-9
                ? number(friction.thread(), 2)
                : "thread " + number(friction.thread(), 2) + ", head " + number(friction.head(), 2);
    }

    /** What a torque gives, the least preload first. */
    public static List<AnswerRow> band(Tightening.Band band) {
        List<AnswerRow> rows = new ArrayList<>();
        rows.add(point("at the most friction", band.low()));
        rows.add(point("half way", band.likely()));
        rows.add(point("at the least friction", band.high()));
        rows.add(
                new AnswerRow(
                        "",
                        "the same torque gives " + number(band.ratio(), 1)
                                + " times the preload on the slippery thread; that is why the state of the thread belongs to the torque"));
        if (band.high().yieldShare() > 1) {
            rows.add(AnswerRow.remark(
                    "at the least friction the bolt stretches for good: too much, or the thread is meant to be dry"));
        }
        return rows;
    }

    private static AnswerRow point(String label, Tightening.Point point) {
        return new AnswerRow(
                label + " (" + friction(point.friction()) + ")",
                kN(point.preload_N()) + " of preload, " + percent(point.yieldShare()) + " of yield");
    }

    /** What was taken for granted about a bolt. */
    public static List<AnswerRow> taken(boolean typicalHead) {
        List<AnswerRow> rows = new ArrayList<>();
        if (typicalHead) {
            rows.add(AnswerRow.remark(
                    "bearing face and hole of a usual hexagon head were taken; say yours for a flange or socket head"));
        }
        rows.add(AnswerRow.remark(
                "friction of a state of the thread is typical; the manual's torque comes before any of this"));
        return rows;
    }

    /** The torque for a preload at one friction. */
    public static AnswerRow torque(Friction friction, double preload_N, Tightening.Torques torques) {
        double total = torques.total_Nm();
        return new AnswerRow(
                "at friction " + friction(friction),
                number(total, 1) + " N·m for " + kN(preload_N) + "; of it " + percent(torques.lead_Nm() / total)
                        + " stretches, " + percent(torques.thread_Nm() / total) + " rubs in the thread, "
                        + percent(torques.head_Nm() / total) + " under the head");
    }

    /** What an angle does. */
    public static List<AnswerRow> angle(
            double angle_deg,
            Preload.Spring spring,
            double gained_N,
            double stretch_mm,
            Optional<Double> proof_N,
            Optional<Double> toProof_deg) {
        List<AnswerRow> rows = new ArrayList<>();
        rows.add(new AnswerRow("turned", number(angle_deg, 0) + "°"));
        rows.add(new AnswerRow("preload gained", kN(gained_N)));
        rows.add(new AnswerRow("bolt longer by", mm(stretch_mm)));
        rows.add(new AnswerRow(
                "of it, in a bolt",
                number(spring.length_mm(), 1) + " mm long, " + number(spring.area_mm2(), 1) + " mm²"));
        proof_N.ifPresent(load -> rows.add(new AnswerRow("proof load", kN(load))));
        toProof_deg.ifPresent(degrees -> rows.add(new AnswerRow("from nothing to it", number(degrees, 0) + "°")));
        if (proof_N.filter(load -> gained_N > load).isPresent()) {
            rows.add(AnswerRow.remark(
                    "beyond the proof load the bolt yields and gains less: it is one that is tightened into yield"));
        }
        return rows;
    }

    /** Which wrench, what to set, and what is wrong with the others. */
    public static List<AnswerRow> wrench(
            Optional<Adaptor> adaptor, String wanted, String setting, Wrench.Choice choice) {
        List<AnswerRow> rows = new ArrayList<>();
        rows.add(new AnswerRow("wanted at the bolt", wanted));
        adaptor.ifPresent(between -> rows.add(new AnswerRow(
                "through an adaptor of",
                number(between.offset_mm(), 0) + " mm on " + number(between.wrench_mm(), 0) + " mm, at "
                        + number(between.angle_deg(), 0) + "°: times " + number(between.factor(), 4))));
        rows.add(new AnswerRow("set the wrench to", setting));
        rows.add(new AnswerRow(
                "take", choice.best().map(Wrench::name).orElse("none of these: hire or borrow one that suits")));
        choice.judged().forEach(judged -> rows.add(new AnswerRow(judged.wrench().name(), fit(judged))));
        return rows;
    }

    /** Whether a wrench suits, with its scale and the reason. */
    public static String fit(Wrench.Judged judged) {
        Wrench wrench = judged.wrench();
        return number(wrench.least_Nm(), 0) + " to " + number(wrench.most_Nm(), 0) + " N·m: " + reason(judged);
    }

    /** Whether a wrench suits, or why not. */
    public static String reason(Wrench.Judged judged) {
        return switch (judged.fit()) {
            case SUITS -> "suits";
            case LOW_ON_SCALE ->
                "too low on its scale, it can be relied on from "
                        + number(judged.wrench().reliableFrom_Nm(), 0) + " N·m";
            case BELOW_SCALE -> "cannot be set so low";
            case ABOVE_SCALE -> "cannot be set so high";
        };
    }

    /** What is wrong with an order of tightening. */
    public static List<AnswerRow> pattern(PatternCheck check) {
        List<AnswerRow> rows = new ArrayList<>();
        for (PatternCheck.Fault fault : check.faults()) {
            rows.add(AnswerRow.remark(
                    switch (fault.kind()) {
                        case MISSING -> "bolt " + fault.position() + " is missing from the order";
                        case TWICE -> "bolt " + fault.position() + " stands twice in the order";
                        case UNKNOWN -> "there is no bolt " + fault.position();
                        case OUTSIDE_FIRST ->
                            "bolt " + fault.position() + " lies nearer to the middle than bolt " + fault.other()
                                    + ", and comes after it";
                        case NEIGHBOURS_FIRST ->
                            "bolts " + fault.other() + " and " + fault.position()
                                    + " are neighbours: the order does not cross over";
                    }));
        }
        if (!Double.isNaN(check.lopsided())) {
            rows.add(new AnswerRow(
                    "lopsided at worst",
                    percent(check.lopsided()) + "; our order " + percent(check.ours()) + ", one after the other "
                            + percent(check.inLine())));
        }
        if (check.faults().isEmpty()) {
            rows.add(AnswerRow.remark("nothing is wrong with the order"));
        }
        return rows;
    }

    /** Whether a stretched bolt may be used once more. */
    public static List<AnswerRow> reuse(StretchCheck check) {
        return List.of(
                new AnswerRow("length", verdict(check.lengthVerdict())),
                new AnswerRow("thinnest place", verdict(check.neckVerdict())),
                new AnswerRow(
                        "so",
                        switch (check.advice()) {
                            case MAY_BE_USED_AGAIN -> "it may be used once more, if the manual allows it at all";
                            case RENEW -> "renew it";
                            case MEASURE_OR_RENEW -> "too close to call: measure more finely, or renew it";
                            case NOTHING_KNOWN -> "nothing can be said: measure it, and look up its limit";
                        }));
    }

    private static String verdict(StretchCheck.Verdict verdict) {
        return switch (verdict) {
            case WITHIN -> "within its limit";
            case BEYOND -> "beyond its limit";
            case TOO_CLOSE -> "too close to its limit for the instrument";
            case NOT_MEASURED -> "not measured, or its limit not known";
        };
    }

    /** How to go on after an interruption. @param angle whether it is an angle stage */
    public static List<AnswerRow> resume(Resume resume, boolean angle) {
        List<AnswerRow> rows = new ArrayList<>();
        if (!resume.spent().isEmpty()) {
            rows.add(AnswerRow.remark("it is not certain which were turned: take all out and renew them, "
                    + String.join(", ", resume.spent()) + "; then start again from the first stage"));
            return rows;
        }
        if (angle) {
            rows.add(new AnswerRow(
                    "leave alone", resume.leave().isEmpty() ? "none" : String.join(", ", resume.leave())));
            rows.add(new AnswerRow("turn now", resume.turn().isEmpty() ? "none" : String.join(", ", resume.turn())));
            rows.add(AnswerRow.remark("an angle is never turned twice: only those without mark and entry get it"));
        } else {
            rows.add(new AnswerRow("turn now, all of them", String.join(", ", resume.turn())));
            rows.add(AnswerRow.remark("a torque stage starts again at its first bolt, and nothing is backed off"));
        }
        return rows;
    }
}
