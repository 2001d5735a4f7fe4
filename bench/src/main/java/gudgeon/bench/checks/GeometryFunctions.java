package gudgeon.bench.checks;

import static gudgeon.bench.checks.Computation.one;

import java.util.Map;

/** Volumes, compression and timing. */
final class GeometryFunctions {
    private GeometryFunctions() {}

    static void into(Map<String, Computation> all) {
        all.put("compression_ratio", one(args -> args.number("volume_bdc_in3") / args.number("volume_tdc_in3")));
    }
}
