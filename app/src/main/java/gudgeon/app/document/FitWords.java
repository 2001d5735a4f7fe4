package gudgeon.app.document;

import static gudgeon.app.document.BoltWords.mm;
import static gudgeon.app.document.BoltWords.number;

import gudgeon.core.fitting.Aim;
import gudgeon.core.fitting.EndFloatFit;
import gudgeon.core.fitting.GasketFit;
import gudgeon.core.fitting.PairFit;
import gudgeon.core.fitting.RingFit;
import gudgeon.core.fitting.ShellFit;
import gudgeon.core.fitting.ShimFit;
import gudgeon.core.fitting.WeightFit;
import java.util.ArrayList;
import java.util.List;

/** Fits in words and figures: who goes where, before and after, and what else there is. */
public final class FitWords {
    private FitWords() {}

    /** How good a set of fits is. */
    public static String quality(Aim.Quality quality, int count) {
        String outside = quality.outside() == 0
                ? "all " + count + " within the limits"
                : quality.outside() + " of " + count + " outside the limits";
        return outside + "; farthest from the best " + number(quality.worst_um(), 0) + " µm, together "
                + number(quality.total_um(), 0) + " µm";
    }

    /** Shims: as it comes, the plan, the larger purchases. */
    public static List<AnswerRow> shims(List<ShimFit.Valve> valves, ShimFit fit) {
        List<AnswerRow> rows = new ArrayList<>();
        int count = valves.size();
        rows.add(new AnswerRow("as it comes", quality(fit.before(), count)));
        for (ShimFit.Plan plan : fit.plans()) {
            String bought = plan.bought() == 0 ? "nothing bought" : Figures.count(plan.bought(), "shim") + " bought";
            String label = plan.equals(fit.plans().getFirst()) ? "best" : "or";
            rows.add(new AnswerRow(label + ", " + bought, quality(plan.after(), count)));
        }
        for (ShimFit.Placed placed : fit.plans().getFirst().placed()) {
            ShimFit.Valve valve = valves.get(placed.valve());
            rows.add(new AnswerRow(
                    valve.name(),
                    shim(valves, placed) + ": clearance " + mm(valve.clearance_mm()) + " becomes "
                            + mm(placed.clearance_mm())
                            + (valve.aim().holds(placed.clearance_mm()) ? "" : ", outside its limits")));
        }
        return rows;
    }

    private static String shim(List<ShimFit.Valve> valves, ShimFit.Placed placed) {
        String size = mm(placed.shim_mm());
        return switch (placed.from()) {
            case STAYS -> size + " stays";
            case VALVE -> size + " from " + valves.get(placed.source()).name();
            case BOX -> size + " from the box";
            case BOUGHT -> size + " to buy";
        };
    }

    /** Pairs: as it comes, the best, others. @param place what a place is called @param piece what a piece is called */
    public static List<AnswerRow> pairs(String place, String piece, Aim aim, PairFit fit) {
        int count = fit.best().pieceOf().size();
        List<AnswerRow> rows = new ArrayList<>();
        rows.add(new AnswerRow("as it comes", quality(fit.before().quality(), count)));
        rows.add(new AnswerRow("best", quality(fit.best().quality(), count)));
        for (int at = 0; at < count; at++) {
            double clearance_mm = fit.best().clearance_mm().get(at);
            rows.add(new AnswerRow(
                    place + " " + (at + 1),
                    piece + " " + (fit.best().pieceOf().get(at) + 1) + ": clearance " + mm(clearance_mm)
                            + (aim.holds(clearance_mm) ? "" : ", outside the limits")));
        }
        for (PairFit.Plan other : fit.others()) {
            rows.add(new AnswerRow("or " + piece + " " + numbers(other.pieceOf()), quality(other.quality(), count)));
        }
        return rows;
    }

    private static String numbers(List<Integer> indices) {
        return String.join(
                " ", indices.stream().map(index -> String.valueOf(index + 1)).toList());
    }

    /** Rings: as it comes, the best, what is filed. */
    public static List<AnswerRow> rings(RingFit fit) {
        List<AnswerRow> rows = new ArrayList<>();
        rows.add(new AnswerRow("as it comes", ringPlan(fit.before())));
        rows.add(new AnswerRow("best", ringPlan(fit.best())));
        for (int bore = 0; bore < fit.best().placed().size(); bore++) {
            RingFit.Placed placed = fit.best().placed().get(bore);
            String filed =
                    placed.file_mm() > 0 ? ", file off " + mm(placed.file_mm()) + " to " + mm(placed.filed_mm()) : "";
            rows.add(new AnswerRow(
                    "bore " + (bore + 1),
                    "ring " + (placed.ring() + 1) + ": gap " + mm(placed.gap_mm())
                            + (placed.usable() ? filed : ", too large: this ring cannot be used here")));
        }
        rows.add(AnswerRow.remark(
                "file a little, measure squared in its bore, file again; a gap cannot be made smaller"));
        return rows;
    }

    private static String ringPlan(RingFit.Plan plan) {
        return (plan.unusable() == 0 ? "" : Figures.count(plan.unusable(), "ring") + " too open; ") + mm(plan.file_mm())
                + " to file altogether";
    }

    /** Shells: the plan, the one with halves of one grade. */
    public static List<AnswerRow> shells(
            List<ShellFit.Bearing> bearings, List<ShellFit.Grade> grades, Aim aim, ShellFit fit) {
        List<AnswerRow> rows = new ArrayList<>();
        if (fit.plan().placed().isEmpty()) {
            rows.add(AnswerRow.remark("there are too few shells, and no more can be bought"));
            return rows;
        }
        rows.add(new AnswerRow("best", quality(fit.plan().quality(), bearings.size()) + "; " + halves(fit.plan())));
        if (!fit.oneGrade().equals(fit.plan()) && !fit.oneGrade().placed().isEmpty()) {
            rows.add(new AnswerRow(
                    "both halves of one grade",
                    quality(fit.oneGrade().quality(), bearings.size()) + "; " + halves(fit.oneGrade())));
        }
        for (ShellFit.Placed placed : fit.plan().placed()) {
            String first = grades.get(placed.first()).name();
            String second = grades.get(placed.second()).name();
            rows.add(new AnswerRow(
                    bearings.get(placed.bearing()).name(),
                    (first.equals(second) ? first + ", both halves" : first + " and " + second) + ": clearance "
                            + mm(placed.clearance_mm())
                            + (aim.holds(placed.clearance_mm()) ? "" : ", outside the limits")));
        }
        for (int grade = 0; grade < grades.size(); grade++) {
            int bought = fit.plan().bought().get(grade);
            if (bought > 0) {
                rows.add(new AnswerRow(
                        "buy",
                        Figures.count(bought, "half").replace("halfs", "halves") + " "
                                + grades.get(grade).name()));
            }
        }
        return rows;
    }

    private static String halves(ShellFit.Plan plan) {
        int bought = plan.boughtHalves();
        return bought == 0 ? "nothing bought" : bought == 1 ? "1 half bought" : bought + " halves bought";
    }

    /** Weights: as it comes, the best, what comes off. */
    public static List<AnswerRow> weights(List<String> names, double allowed_g, WeightFit fit) {
        List<AnswerRow> rows = new ArrayList<>();
        rows.add(new AnswerRow(
                "as it comes", "sets differ by " + grams(fit.before().spread_g())));
        rows.add(new AnswerRow(
                "best",
                "sets differ by " + grams(fit.best().spread_g())
                        + (fit.proven() ? ", proven: no other way is nearer" : ", the best found; not proven")));
        List<Double> off = fit.best().takeOff_g(allowed_g);
        for (int set = 0; set < off.size(); set++) {
            List<String> pieces = new ArrayList<>();
            for (int kind = 0; kind < names.size(); kind++) {
                pieces.add(
                        names.get(kind) + " " + (fit.best().members().get(set).get(kind) + 1));
            }
            rows.add(new AnswerRow(
                    "set " + (set + 1),
                    String.join(", ", pieces) + ": " + grams(fit.best().sums_g().get(set))
                            + (off.get(set) > 0.005 ? ", take off " + grams(off.get(set)) : "")));
        }
        return rows;
    }

    private static String grams(double value) {
        return number(value, 2) + " g";
    }

    /** The head gasket. */
    public static List<AnswerRow> gasket(double allowed_mm, GasketFit fit) {
        List<AnswerRow> rows = new ArrayList<>();
        rows.add(new AnswerRow("highest piston stands out", mm(fit.highest_mm())));
        rows.add(new AnswerRow(
                "gasket",
                fit.grade()
                        .map(grade -> grade.name() + ", " + mm(grade.thickness_mm()) + " when compressed")
                        .orElse("none of the grades covers it: measure again, then ask why")));
        fit.tooClose()
                .ifPresent(other -> rows.add(AnswerRow.remark("within the uncertainty of the reading it may also be "
                        + other.name() + ": measure that piston again")));
        fit.byMean()
                .ifPresent(other -> rows.add(AnswerRow.remark("by the means of its two points it would be "
                        + other.name() + "; the highest reading decides, and a piston that rocks so is worth a look")));
        for (int piston = 0; piston < fit.clearances_mm().size(); piston++) {
            rows.add(new AnswerRow(
                    "piston " + (piston + 1) + " to head",
                    mm(fit.clearances_mm().get(piston))));
        }
        rows.add(new AnswerRow("pistons differ by", mm(fit.spread_mm())));
        if (!fit.low().isEmpty()) {
            rows.add(AnswerRow.remark("lower than the highest by more than " + mm(allowed_mm) + ": piston "
                    + Figures.list(fit.low().stream()
                            .map(low -> String.valueOf(low + 1))
                            .toList())
                    + ". Look for a bent rod before choosing a gasket"));
        }
        if (!fit.rocked().isEmpty()) {
            rows.add(AnswerRow.remark("the two points differ by more than " + mm(allowed_mm) + ": piston "
                    + Figures.list(fit.rocked().stream()
                            .map(low -> String.valueOf(low + 1))
                            .toList())
                    + ". Read both over the gudgeon pin"));
        }
        rows.add(AnswerRow.remark("skimming the head does not change this; skimming the block does"));
        return rows;
    }

    /** An end float. */
    public static List<AnswerRow> endFloat(double measured_mm, Aim aim, EndFloatFit fit) {
        List<AnswerRow> rows = new ArrayList<>();
        rows.add(new AnswerRow(
                "as it is",
                mm(measured_mm) + (aim.holds(measured_mm) ? ", within its limits" : ", outside its limits")));
        String label = "take";
        for (EndFloatFit.Stack stack : fit.choices()) {
            rows.add(new AnswerRow(
                    label,
                    String.join(
                                    " and ",
                                    stack.pieces_mm().stream()
                                            .map(BoltWords::mm)
                                            .toList()) + ": float " + mm(stack.float_mm())
                            + (stack.allowed() ? "" : ", outside its limits")));
            label = "or";
        }
        return rows;
    }
}
