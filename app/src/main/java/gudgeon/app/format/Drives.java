package gudgeon.app.format;

import gudgeon.core.engine.FastenerKind;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Which tool a drive asks for. The table is in docs/engine-file.md. */
final class Drives {
    private static final Map<String, String> TOOLS = tools();

    private Drives() {}

    private static Map<String, String> tools() {
        Map<String, String> map = new LinkedHashMap<>();
        map.put("hexagon socket ", "hexagon key ");
        map.put("hexagon ", "socket or spanner ");
        map.put("lobe socket ", "lobe key ");
        map.put("lobe ", "lobe socket ");
        map.put("twelve-point ", "twelve-point socket ");
        map.put("spline ", "spline bit ");
        map.put("square ", "square key ");
        map.put("slot", "slot screwdriver");
        map.put("cross", "cross screwdriver");
        return map;
    }

    /** The tool of a drive; of the kind of fastener when no drive is written; empty when fingers do it. */
    static Optional<String> tool(FastenerKind kind, String drive) {
        if (drive.isEmpty()) {
            return ofKind(kind);
        }
        if (drive.equals("hand")) {
            return Optional.empty();
        }
        if (drive.startsWith("hexagon ") && !drive.startsWith("hexagon socket ")) {
            String size = drive.substring("hexagon ".length());
            if (kind == FastenerKind.UNION_NUT) {
                return Optional.of("flare-nut spanner " + size);
            }
            if (kind == FastenerKind.SPARK_PLUG) {
                return Optional.of("spark plug socket " + size);
            }
        }
        for (Map.Entry<String, String> entry : TOOLS.entrySet()) {
            if (drive.startsWith(entry.getKey())) {
                return Optional.of(
                        entry.getValue() + drive.substring(entry.getKey().length()));
            }
        }
        return Optional.of(drive);
    }

    private static Optional<String> ofKind(FastenerKind kind) {
        return switch (kind) {
            case CIRCLIP -> Optional.of("circlip pliers");
            case SPRING_CLIP -> Optional.of("hose clip pliers");
            case WORM_CLIP -> Optional.of("screwdriver");
            case COLLETS -> Optional.of("valve spring compressor");
            case CABLE_TIE -> Optional.of("side cutters");
            default -> Optional.empty();
        };
    }
}
