package gudgeon.app.format;

import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/**
 * Who vouches for a value: the word {@code typical}, or a place in the user's manual.
 *
 * @param source "typical", or where it stands
 * @param typical true when nobody but the file vouches for it
 */
record Basis(String source, boolean typical) {
    private static final String TYPICAL = "typical";

    /** The key {@code basis}, which must be there. */
    static Basis read(Fields fields, Problems problems) {
        Optional<Node> basis = fields.need("basis");
        if (basis.isPresent()
                && basis.get() instanceof ScalarNode scalar
                && scalar.getValue().equals(TYPICAL)) {
            return new Basis(TYPICAL, true);
        }
        return new Basis(basis.map(node -> manual(node, problems)).orElse(""), false);
    }

    private static String manual(Node node, Problems problems) {
        if (!(node instanceof MappingNode)) {
            problems.fault(node, "this is not a basis", "write basis: typical, or basis: { manual: where it stands }");
            return "";
        }
        Fields fields = Fields.of(node, "basis", problems);
        String where = fields.need("manual")
                .flatMap(value -> Fields.textOf(value, problems))
                .orElse("");
        fields.close();
        return where;
    }
}
