package gudgeon.core.engine;

import gudgeon.core.quantity.Length;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Something measured, of a part or between parts.
 *
 * @param id ASCII, unique among features
 * @param kind cylinder bore, flatness, end float ...
 * @param parts the measured part, or the parts it lies between
 * @param access what must be out of the way before it can be measured
 * @param nominal nominal size; empty when there is none
 * @param take readings to take, as written in the file: depths, directions, points ...
 * @param limits limits to hold, by name
 */
public record Feature(
        String id,
        String name,
        String kind,
        List<String> parts,
        Condition access,
        Optional<Length> nominal,
        Map<String, List<String>> take,
        List<Limit> limits) {
    public Feature {
        parts = List.copyOf(parts);
        limits = List.copyOf(limits);
    }

    /**
     * A limit and who set it.
     *
     * @param name new, wear, taper, flatness ...
     * @param min lower bound; empty when open below
     * @param max upper bound; empty when open above
     * @param basis "typical", or the place in the user's manual
     * @param typical true when nobody but this file vouches for it: a verdict on it is provisional
     */
    public record Limit(String name, Optional<Length> min, Optional<Length> max, String basis, boolean typical) {}
}
