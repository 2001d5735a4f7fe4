package gudgeon.core.planning;

import java.util.List;
import java.util.Optional;

/**
 * What it takes to reach each part of an engine by itself, from one and the same state. The cheapest sets are proven; what
 * was not looked for stands as a bound.
 *
 * @param reaches one for each part but the base, in file order
 */
public record EveryPart(List<Reach> reaches) {
    public EveryPart {
        reaches = List.copyOf(reaches);
    }

    /** How a part stands. */
    public sealed interface Reach {
        String part();

        /** It is off already. */
        record Off(String part) implements Reach {}

        /** This takes it off. */
        record By(String part, Trip trip) implements Reach {}

        /** It cannot be taken off, with the reasons, most telling first. */
        record Never(String part, List<Blocked.Reason> reasons) implements Reach {
            public Never {
                reasons = List.copyOf(reasons);
            }
        }
    }

    /**
     * How a part stands.
     *
     * @throws IllegalArgumentException when the engine does not have it, or it is the base
     */
    public Reach reach(String part) {
        return reaches.stream()
                .filter(reach -> reach.part().equals(part))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(part + " is no part that could be reached"));
    }

    /** What it takes; empty when it cannot be taken off. */
    public Optional<Trip> findTrip(String part) {
        return switch (reach(part)) {
            case Reach.Off off -> Optional.of(Trip.NONE);
            case Reach.By by -> Optional.of(by.trip());
            case Reach.Never never -> Optional.empty();
        };
    }
}
