package gudgeon.core.engine;

import gudgeon.core.quantity.Length;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One fastener in one hole.
 *
 * @param id joint id and position: {@code head-bolts/3}
 * @param kind see {@link FastenerKind}
 * @param thread as written on it: M8x1.25, with LH for a left-hand thread; empty when it has none
 * @param length under the head; empty when not given
 * @param drive what turns it: hexagon 13 mm, hexagon socket 6 mm, lobe socket 40, twelve-point 12 mm, spline 10 mm ...
 * @param place where it sits and what it screws into
 * @param washers what lies on it, by specification; empty when bare
 * @param once what of it is used once: "", "all", "nut", "washers"
 * @param locking thread-lock, tab, split pin ...; empty when plain
 * @param grade property class: 8.8, 10.9 ...; empty when not given
 */
public record Fastener(
        String id,
        FastenerKind kind,
        String thread,
        Optional<Length> length,
        String drive,
        Place place,
        List<String> washers,
        String once,
        String locking,
        String grade) {
    public Fastener {
        washers = List.copyOf(washers);
    }

    /**
     * Where a fastener sits.
     *
     * @param x_mm position on its face, millimetres; empty when not given
     * @param y_mm position on its face, millimetres; empty when not given
     * @param holeMaterial what the hole is cut in; empty when not given
     * @param holeDepth usable depth of the hole; empty when not given
     * @param through whether the hole goes through
     * @param opensTo what lies behind it: oil, coolant, combustion ...; empty when nothing
     */
    public record Place(
            OptionalDouble x_mm,
            OptionalDouble y_mm,
            String holeMaterial,
            Optional<Length> holeDepth,
            boolean through,
            String opensTo) {
        public static final Place UNKNOWN =
                new Place(OptionalDouble.empty(), OptionalDouble.empty(), "", Optional.empty(), false, "");
    }
}
