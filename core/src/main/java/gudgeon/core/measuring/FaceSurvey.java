package gudgeon.core.measuring;

import java.util.ArrayList;
import java.util.List;

/**
 * The flatness of a face from heights over a grid. The face is first levelled by its least-squares plane, heights then being taken
 * square to it, so that neither tilt nor turning matters; then the two parallel planes of least distance are found exactly.
 * Source: [ISO12781].
 *
 * @param points as read
 * @param levelled the same points over their least-squares plane, square to it
 * @param leastSquares the range of heights over the least-squares plane, in mm
 * @param zone the two planes of least distance, in the levelled frame
 */
public record FaceSurvey(List<FacePoint> points, List<FacePoint> levelled, double leastSquares, FacePlane zone) {
    public FaceSurvey {
        points = List.copyOf(points);
        levelled = List.copyOf(levelled);
    }

    /**
     * The survey of some points.
     *
     * @param points at least one; a plane is determined by three that do not lie on one line in plan, and only more than three
     *     say something of flatness ({@link #saysSomething})
     */
    public static FaceSurvey of(List<FacePoint> points) {
        FacePlane plane = FacePlane.leastSquares(points);
        List<FacePoint> levelled = level(points, plane);
        return new FaceSurvey(
                points, levelled, FacePlane.leastSquares(levelled).width(), FacePlane.minimumZone(levelled));
    }

    /** Whether there are more places than any plane, or straight line, would pass through. */
    public boolean saysSomething() {
        long places = points.stream()
                .map(point -> new PlanePoint(point.x_mm(), point.y_mm()))
                .distinct()
                .count();
        return places > zone.rank() + 1L;
    }

    /** Whether the places lie on one line, so that only straightness along it was measured. */
    public boolean lineOnly() {
        return zone.rank() < 2;
    }

    /**
     * The flatness: the least distance of two parallel planes. What the dial may err by over its travel counts once; each point
     * that holds a plane adds its last figure and its repeats by its share.
     *
     * @param dial with what heights were read
     * @param repeats how well they repeat
     */
    public Derived flatness(Instrument dial, Repeatability repeats) {
        List<Contribution> lines = new ArrayList<>();
        List<String> from = new ArrayList<>();
        lines.add(Contribution.within(
                new Source(Source.Kind.INSTRUMENT, dial.id()), Spread.RECTANGULAR, dial.maximumError_mm(), 1));
        for (FacePlane.Contact high : zone.highs()) {
            lines.addAll(lines(high, 1, dial, repeats));
            from.add(place(high));
        }
        for (FacePlane.Contact low : zone.lows()) {
            lines.addAll(lines(low, -1, dial, repeats));
            from.add(place(low));
        }
        List<Budget> single =
                lines.stream().map(line -> new Budget(List.of(line))).toList();
        return new Derived(Derived.Trait.FLATNESS, new Estimate(width_mm(), Budget.sum(single)), from);
    }

    /** The flatness in mm. */
    public double width_mm() {
        double slopes = zone.slopeX() * zone.slopeX() + zone.slopeY() * zone.slopeY();
        return zone.width() / Math.sqrt(1 + slopes);
    }

    /** The height of a point over the lower of the two planes, in mm. */
    public double overLowest_mm(int point) {
        return zone.over(levelled.get(point)) + zone.width() / 2;
    }

    /**
     * How deep a cut parallel to the two planes goes at the highest place until the lowest is clean.
     *
     * @param flatness as measured
     * @param allowance_mm what the last cut takes off at the least; zero or more
     */
    public static Derived skim(Derived flatness, double allowance_mm) {
        if (!(allowance_mm >= 0)) {
            throw new IllegalArgumentException("a finishing allowance is zero or more, not " + allowance_mm);
        }
        double sure = flatness.estimate().oneSided(DecisionRule.SURE);
        return new Derived(Derived.Trait.SKIM, flatness.estimate().plus(sure + allowance_mm), flatness.from());
    }

    private static List<Contribution> lines(
            FacePlane.Contact contact, int sign, Instrument dial, Repeatability repeats) {
        String place = place(contact);
        Source.Kind kind = repeats.assumed() ? Source.Kind.REPEATS_ASSUMED : Source.Kind.REPEATS;
        return List.of(
                Contribution.within(
                        new Source(Source.Kind.RESOLUTION, place),
                        Spread.RECTANGULAR,
                        dial.resolution_mm() / 2,
                        sign * contact.weight()),
                Contribution.of(
                        new Source(kind, place),
                        repeats.standardDeviation_mm(),
                        sign * contact.weight(),
                        repeats.degreesOfFreedom()));
    }

    private static String place(FacePlane.Contact contact) {
        return String.valueOf(contact.point() + 1);
    }

    /** The points turned so that the plane lies flat: first about the line of steepest slope's normal, by Rodrigues' formula. */
    private static List<FacePoint> level(List<FacePoint> points, FacePlane plane) {
        double a = plane.slopeX();
        double b = plane.slopeY();
        double length = Math.sqrt(1 + a * a + b * b);
        double share = 1 / (length * (length + 1));
        List<FacePoint> levelled = new ArrayList<>();
        for (FacePoint point : points) {
            double x = point.x_mm();
            double y = point.y_mm();
            double z = point.z_mm() - plane.level();
            double along = a * x + b * y;
            levelled.add(new FacePoint(
                    x - a * along * share + a * z / length,
                    y - b * along * share + b * z / length,
                    (z - along) / length));
        }
        return levelled;
    }
}
