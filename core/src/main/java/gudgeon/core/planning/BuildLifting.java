package gudgeon.core.planning;

import gudgeon.core.engine.LiftingWay;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Mass and way of lifting of a placing. */
final class BuildLifting {
    private BuildLifting() {}

    static long milligrams(BuildNet net, int lift) {
        return net.history.lifts.get(lift).parts().stream()
                .mapToLong(part -> net.model.mass[part])
                .sum();
    }

    /** The lightest of some ways that carries a lift. */
    static Optional<LiftingWay> way(BuildNet net, int lift, List<LiftingWay> ways) {
        long mass = milligrams(net, lift);
        return ways.stream()
                .filter(way -> Model.milligrams(way.limitKilograms()) >= mass)
                .min(Comparator.comparingDouble(LiftingWay::limitKilograms));
    }

    /** Time of a placing; that of the strongest way where none is strong enough. */
    static long seconds(BuildNet net, int lift) {
        return way(net, lift, net.ways)
                .or(() -> net.ways.stream().max(Comparator.comparingDouble(LiftingWay::limitKilograms)))
                .map(LiftingWay::seconds)
                .orElse(0L);
    }

    /** Closed flexible joints by which a lift hangs once it is back, in file order. */
    static List<Integer> hangsOn(BuildNet net, int lift, BitSet open) {
        BitSet set = net.history.lifts.get(lift).parts();
        return IntStream.range(0, net.model.joints)
                .filter(j -> net.model.flexible[j] && !open.get(j))
                .filter(j -> IntStream.of(net.model.jointParts[j]).anyMatch(set::get)
                        && IntStream.of(net.model.jointParts[j]).anyMatch(part -> !set.get(part)))
                .boxed()
                .toList();
    }
}
