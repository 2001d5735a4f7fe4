package gudgeon.app.desk;

import gudgeon.core.fitting.Aim;
import gudgeon.core.fitting.ShellFit;
import java.util.List;

/**
 * Which bearing shells go where.
 *
 * @param bearings each "main 1: housing, journal"
 * @param grades each "red: thickness, halves on hand", and "no more" when none can be bought
 * @param wanted range of the oil clearance
 * @param best best clearance; empty for the middle of the range
 */
public record ShellQuestion(List<String> bearings, List<String> grades, String wanted, String best) {
    private static final String NO_MORE = "no more";

    public ShellQuestion {
        bearings = List.copyOf(bearings);
        grades = List.copyOf(grades);
    }

    /** The answer. @param aim as read */
    public record Answer(List<ShellFit.Bearing> bearings, List<ShellFit.Grade> grades, Aim aim, ShellFit fit) {
        public Answer {
            bearings = List.copyOf(bearings);
            grades = List.copyOf(grades);
        }
    }

    /** Asks. @throws IllegalArgumentException when something cannot be read */
    public Answer ask(Written written) {
        Aim aim = written.aim("wanted", wanted, best);
        List<ShellFit.Bearing> places = bearings.stream()
                .map(text -> written.named("bearing", text, 2, 2, "main 1: 59.000 mm, 54.980 mm"))
                .map(named -> new ShellFit.Bearing(
                        named.name(),
                        written.length_mm(
                                "housing of " + named.name(), named.values().get(0)),
                        written.length_mm(
                                "journal of " + named.name(), named.values().get(1))))
                .toList();
        List<ShellFit.Grade> shells =
                grades.stream().map(text -> grade(text, written)).toList();
        return new Answer(places, shells, aim, ShellFit.of(places, shells, aim));
    }

    private static ShellFit.Grade grade(String text, Written written) {
        Written.Named named = written.named("grade", text, 1, 3, "red: 1.990 mm, 4");
        boolean last = named.values().getLast().equalsIgnoreCase(NO_MORE);
        int values = named.values().size() - (last ? 1 : 0);
        return new ShellFit.Grade(
                named.name(),
                written.length_mm("grade " + named.name(), named.values().get(0)),
                values > 1
                        ? written.whole(
                                "halves of " + named.name(), named.values().get(1))
                        : 0,
                !last);
    }
}
