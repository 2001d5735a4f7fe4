package gudgeon.app.format;

import gudgeon.core.engine.Spend;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** Reads what is destroyed, and merges what is the same to buy. */
final class Spends {
    private static final List<String> SEALS = List.of("gasket", "o-ring", "washer", "seal");
    private static final int MOST = 1000;
    private static final double DEAREST = 1_000_000;

    private final Scope scope;

    Spends(Scope scope) {
        this.scope = scope;
    }

    /** A list of specs or {@code { spec, count, price }}. */
    List<Spend> list(Fields fields, String key) {
        List<Spend> spends = new ArrayList<>();
        for (Node entry : fields.list(key)) {
            if (entry instanceof ScalarNode) {
                Fields.textOf(entry, scope.problems())
                        .ifPresent(spec -> spends.add(new Spend(spec, 1, OptionalDouble.empty())));
            } else {
                Fields spend = scope.fields(entry, "what is destroyed");
                String spec = spend.need("spec")
                        .flatMap(node -> Fields.textOf(node, scope.problems()))
                        .orElse("");
                spends.add(new Spend(spec, spend.whole("count", 1, 1, MOST), price(spend)));
                spend.close();
            }
        }
        return spends;
    }

    /** The seals of a joint; only those used once are destroyed. */
    List<Spend> seals(Fields fields) {
        List<Spend> spends = new ArrayList<>();
        for (Node entry : fields.list("seals")) {
            Fields seal = scope.fields(entry, "a seal");
            List<String> specs = new ArrayList<>();
            for (String kind : SEALS) {
                String spec = seal.text(kind, "");
                if (!spec.isEmpty()) {
                    specs.add(spec);
                }
            }
            if (specs.size() != 1) {
                scope.problems()
                        .fault(
                                entry,
                                specs.isEmpty() ? "a seal that is not described" : "two seals in one entry",
                                "write one of gasket, o-ring, washer, seal with what to buy");
            }
            boolean once = seal.yes("once");
            int count = seal.whole("count", 1, 1, MOST);
            OptionalDouble price = price(seal);
            seal.close();
            if (once && specs.size() == 1) {
                spends.add(new Spend(specs.get(0), count, price));
            }
        }
        return spends;
    }

    static OptionalDouble price(Fields fields) {
        return fields.number("price", 0, DEAREST);
    }

    /** The same spec once, counts added, the first price known kept. */
    static List<Spend> merged(List<Spend> spends) {
        Map<String, Spend> bySpec = new LinkedHashMap<>();
        for (Spend spend : spends) {
            bySpec.merge(
                    spend.spec(),
                    spend,
                    (a, b) -> new Spend(
                            a.spec(),
                            a.count() + b.count(),
                            a.priceEach().isPresent() ? a.priceEach() : b.priceEach()));
        }
        return List.copyOf(bySpec.values());
    }
}
