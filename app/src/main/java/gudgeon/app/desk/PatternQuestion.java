package gudgeon.app.desk;

import gudgeon.core.bolting.CrossPattern;
import gudgeon.core.bolting.PatternCheck;
import gudgeon.core.bolting.PlacePattern;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * In which order to tighten.
 *
 * @param count how many fasteners evenly round a circle; 0 when places are given
 * @param places each "x, y" in one unit of length, in the order of the numbers
 * @param insideOut whether it is a head or another face that is tightened from the middle
 * @param check an order to look at, numbers from 1; none when there is none
 */
public record PatternQuestion(int count, List<String> places, boolean insideOut, List<Integer> check) {
    private static final double RADIUS = 50;
    private static final int MOST = 100;

    public PatternQuestion {
        places = List.copyOf(places);
        check = List.copyOf(check);
    }

    /**
     * The answer.
     *
     * @param spots where the fasteners lie; on a circle when only their number was given
     * @param order in which to tighten them
     * @param check of the order that was given
     */
    public record Answer(List<PlacePattern.Spot> spots, List<Integer> order, Optional<PatternCheck> check) {
        public Answer {
            spots = List.copyOf(spots);
            order = List.copyOf(order);
        }
    }

    /** Asks. @throws IllegalArgumentException when something cannot be read */
    public Answer ask(Written written) {
        if (count > 0 == !places.isEmpty() || count > MOST || places.size() > MOST || count < 0) {
            throw new IllegalArgumentException(
                    "pattern: say how many bolts lie round a circle, 1 to " + MOST + ", or the place of each");
        }
        List<PlacePattern.Spot> spots = places.isEmpty() ? circle(count) : spots(written);
        List<Integer> order = places.isEmpty()
                ? CrossPattern.order(count)
                : PlacePattern.order(insideOut ? "spiral-out" : "cross", spots.size(), spots);
        return new Answer(
                spots,
                order,
                check.isEmpty()
                        ? Optional.empty()
                        : Optional.of(PatternCheck.of(check, spots.size(), spots, insideOut)));
    }

    private List<PlacePattern.Spot> spots(Written written) {
        List<PlacePattern.Spot> spots = new ArrayList<>();
        for (String place : places) {
            List<String> xy = written.values(place);
            if (xy.size() != 2 || !xy.stream().allMatch(each -> each.matches("-?\\d{1,5}(\\.\\d{1,3})?"))) {
                throw new IllegalArgumentException(
                        "place: '" + Checks.shortened(place) + "' cannot be read; write it in millimetres like 52,-10");
            }
            spots.add(new PlacePattern.Spot(Double.parseDouble(xy.get(0)), Double.parseDouble(xy.get(1))));
        }
        return spots;
    }

    private static List<PlacePattern.Spot> circle(int count) {
        return IntStream.range(0, count)
                .mapToDouble(turn -> 2 * Math.PI * turn / count)
                .mapToObj(angle -> new PlacePattern.Spot(RADIUS * Math.sin(angle), RADIUS * Math.cos(angle)))
                .toList();
    }
}
