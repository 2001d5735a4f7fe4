package gudgeon.app.document;

import static gudgeon.app.document.BoltWords.number;
import static gudgeon.app.document.BoltWords.percent;

import gudgeon.core.fitting.BoltInHole;
import gudgeon.core.fitting.Leftover;
import gudgeon.core.fitting.MixedTin;
import java.util.ArrayList;
import java.util.List;

/** The mixed tin in words. */
public final class TinWords {
    private TinWords() {}

    /** What is forced, what is not, and in how many ways. */
    public static List<AnswerRow> ways(MixedTin tin) {
        List<AnswerRow> rows = new ArrayList<>();
        if (!tin.unfilled().isEmpty()) {
            rows.add(AnswerRow.remark("not all holes can be filled with these bolts. Too few may go into: "
                    + Figures.list(tin.unfilled().stream()
                            .map(hole -> tin.holes().get(hole).name())
                            .toList())));
            return rows;
        }
        rows.add(new AnswerRow(
                "ways to fill all holes", tin.ways() + " kind by kind, " + tin.waysHoleByHole() + " hole by hole"));
        if (tin.over() > 0) {
            rows.add(new AnswerRow("left over then", Figures.count(tin.over(), "bolt")));
        }
        for (int hole = 0; hole < tin.holes().size(); hole++) {
            int at = hole;
            rows.add(new AnswerRow(
                    tin.holes().get(hole).name(),
                    tin.findForced(hole)
                            .map(bolt -> "only " + bolt.name() + " ("
                                    + tin.holes().get(at).count() + ")")
                            .orElseGet(() -> choices(tin, at))));
        }
        return rows;
    }

    private static String choices(MixedTin tin, int hole) {
        List<String> words = new ArrayList<>();
        for (int bolt = 0; bolt < tin.bolts().size(); bolt++) {
            MixedTin.Range range = tin.ranges().get(bolt).get(hole);
            if (range.most() > 0) {
                String number =
                        range.isForced() ? String.valueOf(range.most()) : range.fewest() + " to " + range.most();
                words.add(number + " of " + tin.bolts().get(bolt).name());
            }
        }
        return String.join("; ", words);
    }

    /** Why a bolt does not belong in a hole, or what to mind; of bolts whose thread fits. */
    public static List<AnswerRow> pairs(MixedTin tin) {
        List<AnswerRow> rows = new ArrayList<>();
        for (int bolt = 0; bolt < tin.bolts().size(); bolt++) {
            for (int hole = 0; hole < tin.holes().size(); hole++) {
                BoltInHole pair = tin.pairs().get(bolt).get(hole);
                String said = said(pair);
                if (!said.isEmpty()) {
                    rows.add(new AnswerRow(
                            tin.bolts().get(bolt).name() + " in "
                                    + tin.holes().get(hole).name(),
                            said));
                }
            }
        }
        return rows;
    }

    /** What becomes of a bolt in a hole; empty when the thread is another, or there is nothing to say. */
    static String said(BoltInHole pair) {
        if (pair.hindrances().contains(BoltInHole.Hindrance.OTHER_THREAD)) {
            return "";
        }
        List<String> words = new ArrayList<>();
        for (BoltInHole.Hindrance hindrance : pair.hindrances()) {
            words.add(
                    switch (hindrance) {
                        case OTHER_THREAD -> "";
                        case BOTTOMS ->
                            "bottoms by " + number(pair.over_mm(), 1)
                                    + " mm: it feels tight and clamps nothing, or cracks the casting";
                        case SHORT ->
                            "engages " + number(pair.engaged_mm(), 1) + " mm only, " + number(pair.wanted_mm(), 1)
                                    + " mm are asked for";
                        case REACHES_MOVING_PART ->
                            "reaches what moves behind, by " + number(pair.over_mm(), 1) + " mm";
                        case REACHES_PART -> "reaches what lies behind, by " + number(pair.over_mm(), 1) + " mm";
                    });
        }
        for (BoltInHole.Remark remark : pair.isLegal() ? pair.remarks() : List.<BoltInHole.Remark>of()) {
            words.add(
                    switch (remark) {
                        case ENGAGEMENT_FAIR ->
                            "may go, engages " + number(pair.engaged_mm(), 1) + " mm: fair, not good";
                        case NEAR_THE_BOTTOM -> "may go, less than a turn above the bottom: blow the hole out first";
                        case SEAL_THE_THREAD -> "may go, with sealant on the thread";
                        case MATERIAL_UNKNOWN -> "may go, if the material is known";
                    });
        }
        return String.join("; ", words);
    }

    /** Where a bolt that is left over may be missing. */
    public static List<AnswerRow> leftover(MixedTin tin, Leftover left) {
        List<AnswerRow> rows = new ArrayList<>();
        String bolt = tin.bolts().get(left.bolt()).name();
        if (left.likeliest().isEmpty()) {
            rows.add(AnswerRow.remark(bolt + " fits none of the holes that may still be empty"));
        }
        for (Leftover.Candidate each : left.likeliest()) {
            rows.add(new AnswerRow(
                    tin.holes().get(each.hole()).name(),
                    percent(each.chance()) + " likely; " + Figures.time(Math.round(each.cost())) + " to open"));
        }
        if (left.nowhere() > 0) {
            rows.add(new AnswerRow("none of them", percent(left.nowhere()) + " likely"));
        }
        if (left.toLook().size() > 1) {
            rows.add(new AnswerRow(
                    "look in this order",
                    String.join(
                                    ", then ",
                                    left.toLook().stream()
                                            .map(each ->
                                                    tin.holes().get(each.hole()).name())
                                            .toList())
                            + ": " + Figures.time(Math.round(left.expectedCost())) + " on average"));
        }
        rows.add(AnswerRow.remark("every way that fits is taken as equally likely; what you remember counts for more"));
        return rows;
    }
}
