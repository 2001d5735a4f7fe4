package gudgeon.app.format;

import gudgeon.core.engine.Contents;
import gudgeon.core.quantity.Length;
import gudgeon.core.quantity.Volume;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads how high a circuit's fluid stands, and at which heights joints open it. */
final class ContentsReader {
    private static final Quantities.Range VOLUME = new Quantities.Range(0, 500, "between 0 l and 500 l");

    private final Scope scope;
    private final String circuit;

    ContentsReader(Scope scope, String circuit) {
        this.scope = scope;
        this.circuit = circuit;
    }

    /** The contents, empty when the file does not say or says it wrongly. */
    Optional<Contents> read(Fields fields) {
        List<Contents.Point> curve = new ArrayList<>();
        boolean sound = true;
        for (Node node : fields.list("contents")) {
            Optional<Contents.Point> point = point(scope.fields(node, "a height of " + circuit));
            sound &= point.isPresent() && follows(node, curve, point.get());
            point.ifPresent(curve::add);
        }
        Map<String, Double> openedAt = new LinkedHashMap<>();
        for (Node node : fields.list("opens_at")) {
            sound &= opening(scope.fields(node, "an opening of " + circuit), openedAt);
        }
        if (curve.size() == 1 || (curve.isEmpty() && !openedAt.isEmpty())) {
            scope.problems()
                    .fault(
                            fields.at(curve.isEmpty() ? "opens_at" : "contents"),
                            circuit + " has no 'contents' of two heights at least",
                            "write the lowest with 0 l, then the surface when full with what it holds");
            return Optional.empty();
        }
        return sound && !curve.isEmpty() ? Optional.of(new Contents(curve, openedAt)) : Optional.empty();
    }

    private Optional<Contents.Point> point(Fields fields) {
        fields.need("height");
        fields.need("volume");
        Optional<Length> height = fields.length("height", Scope.HEIGHT);
        Optional<Volume> volume = fields.volume("volume", VOLUME);
        fields.close();
        return height.isPresent() && volume.isPresent()
                ? Optional.of(new Contents.Point(
                        height.get().millimetres(), volume.get().litres()))
                : Optional.empty();
    }

    private boolean follows(Node node, List<Contents.Point> curve, Contents.Point point) {
        if (curve.isEmpty() && point.litres() != 0) {
            scope.problems().fault(node, "something stands below the lowest height of " + circuit, "begin with 0 l");
            return false;
        }
        if (!curve.isEmpty()
                && (point.height_mm() <= curve.getLast().height_mm()
                        || point.litres() < curve.getLast().litres())) {
            scope.problems()
                    .fault(
                            node,
                            "heights and volumes of " + circuit + " do not grow",
                            "write them from the lowest to the surface when full");
            return false;
        }
        return true;
    }

    private boolean opening(Fields fields, Map<String, Double> openedAt) {
        Optional<String> joint =
                fields.need("joint").flatMap(node -> scope.names().resolveOne(node, Names.Kind.JOINT));
        fields.need("height");
        Optional<Length> height = fields.length("height", Scope.HEIGHT);
        fields.close();
        if (joint.isEmpty() || height.isEmpty()) {
            return false;
        }
        openedAt.put(joint.get(), height.get().millimetres());
        return true;
    }
}
