package gudgeon.app.desk;

import gudgeon.app.format.TypedQuantity;
import gudgeon.core.bolting.Bearing;
import gudgeon.core.bolting.Friction;
import gudgeon.core.bolting.MetricThread;
import gudgeon.core.bolting.Preload;
import gudgeon.core.bolting.PropertyClass;
import gudgeon.core.bolting.Tightening;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Torque and preload of a bolt, either way round.
 *
 * @param thread as written
 * @param grade property class
 * @param friction state of the thread, or a range of friction
 * @param head diameter of the bearing face and of the hole, both or neither; without them a typical hexagon head
 */
public record BoltTorque(String thread, String grade, String friction, List<String> head) {
    public BoltTorque {
        head = List.copyOf(head);
    }

    /**
     * The bolt that both questions are about.
     *
     * @param typicalHead whether the bearing face was not given
     */
    public record Bolt(Tightening tightening, PropertyClass grade, Friction.Range range, boolean typicalHead) {}

    /**
     * One value of friction, and what then gives the wanted share of yield.
     *
     * @param torques the torque by what it does
     */
    public record Point(Friction friction, double preload_N, Tightening.Torques torques) {}

    /**
     * The torque for a share of yield.
     *
     * @param share of the lowest yield stress
     * @param points at the least friction, half way, at the most
     */
    public record ForShare(Bolt bolt, double share, List<Point> points) {
        public ForShare {
            points = List.copyOf(points);
        }
    }

    /**
     * What a torque gives.
     *
     * @param torque as typed
     */
    public record OfTorque(Bolt bolt, TypedQuantity torque, Tightening.Band band) {}

    /** Which torque reaches a share of the lowest yield stress. @throws IllegalArgumentException when something cannot be read */
    public ForShare forShare(String share, Written written) {
        Bolt bolt = bolt(written);
        double wanted = written.share("share", share);
        Friction.Range range = bolt.range();
        return new ForShare(
                bolt,
                wanted,
                Stream.of(range.least(), range.middle(), range.most())
                        .map(each -> point(bolt, wanted, each))
                        .toList());
    }

    private static Point point(Bolt bolt, double share, Friction friction) {
        double preload_N = Preload.atYieldShare_N(bolt.tightening().thread(), bolt.grade(), share, friction.thread());
        return new Point(friction, preload_N, bolt.tightening().torques(preload_N, friction));
    }

    /** What a torque gives. @throws IllegalArgumentException when something cannot be read */
    public OfTorque ofTorque(String torque, Written written) {
        Bolt bolt = bolt(written);
        TypedQuantity typed = written.torque("torque", torque);
        if (!(typed.value() > 0)) {
            throw new IllegalArgumentException("torque: it is above 0, not " + torque);
        }
        return new OfTorque(bolt, typed, bolt.tightening().band(typed.value(), bolt.range(), bolt.grade()));
    }

    private Bolt bolt(Written written) {
        MetricThread read = written.thread("thread", thread);
        Optional<Bearing> bearing = switch (head.size()) {
            case 0 -> Optional.empty();
            case 2 ->
                Optional.of(
                        new Bearing(written.length_mm("head", head.get(0)), written.length_mm("hole", head.get(1))));
            default -> throw new IllegalArgumentException("head: say both the bearing face and the hole, or neither");
        };
        return new Bolt(
                new Tightening(read, bearing.orElseGet(() -> Bearing.typical(read))),
                written.grade(grade),
                written.friction(friction),
                bearing.isEmpty());
    }
}
