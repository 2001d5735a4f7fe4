package gudgeon.app.format;

import gudgeon.core.finding.EngineFacts;
import gudgeon.core.finding.Observation;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;

/**
 * Reads a case, JSON or YAML: {@code engine}, a set of facts, and {@code steps}, a list of what was seen and measured. Keys that say
 * nothing to it are left alone; values that cannot be are refused with their place.
 */
public final class FindingCaseReader {
    private final Problems problems;
    private final List<FindingCase.Ask> asks = new ArrayList<>();

    private FindingCaseReader(Problems problems) {
        this.problems = problems;
    }

    /**
     * What came of reading it.
     *
     * @param found the case, when nothing in it is wrong
     * @param problems everything found wrong or remarkable
     */
    public record Read(Optional<FindingCase> found, List<Problem> problems) {
        public Read {
            problems = List.copyOf(problems);
        }
    }

    /** Reads the bytes of a file; the engine's facts stand in it. */
    public static Read read(String file, byte[] bytes) {
        return read(file, bytes, Map.of());
    }

    /**
     * Reads the bytes of a file.
     *
     * @param known facts of the engine that are known from elsewhere, by key, as written; what the file says comes first
     */
    public static Read read(String file, byte[] bytes, Map<String, String> known) {
        Problems problems = new Problems(file);
        Optional<MappingNode> root = text(bytes, problems).flatMap(text -> Tree.of(text, problems));
        if (root.isEmpty()) {
            return new Read(Optional.empty(), problems.inFileOrder());
        }
        Optional<FindingCase> found = new FindingCaseReader(problems).read(root.get(), known);
        return new Read(problems.anyFault() ? Optional.empty() : found, problems.inFileOrder());
    }

    private static Optional<String> text(byte[] bytes, Problems problems) {
        if (bytes.length > PlainText.MOST_BYTES) {
            problems.add(Severity.FAULT, 0, 0, "the file is larger than " + PlainText.MOST_BYTES + " bytes", "");
            return Optional.empty();
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return Optional.of((text.startsWith("\uFEFF") ? text.substring(1) : text).replace('\t', ' '));
        } catch (CharacterCodingException e) {
            problems.add(Severity.FAULT, 0, 0, "this is no text in UTF-8", "save it as UTF-8");
            return Optional.empty();
        }
    }

    private Optional<FindingCase> read(MappingNode root, Map<String, String> known) {
        Fields top = Fields.of(root, "the case", problems);
        Optional<Node> engineNode = top.take("engine");
        EngineFactsReader factsReader = new EngineFactsReader(problems, asks, known);
        List<Node> steps = new ArrayList<>();
        for (String key : List.of("steps", "readings", "observations", "findings")) {
            if (top.has(key)) {
                steps.addAll(top.list(key));
            }
        }
        Optional<EngineFacts> facts = factsReader.read(engineNode, root, steps);
        if (facts.isEmpty()) {
            return Optional.empty();
        }
        ObservationReader reader = new ObservationReader(problems, asks, facts.get());
        List<Observation> observations = reader.read(steps);
        return Optional.of(new FindingCase(
                top.text("id", ""),
                facts.get(),
                observations,
                factors(top),
                tools(top),
                asks,
                problems.inFileOrder()));
    }

    private Map<String, Double> factors(Fields top) {
        Map<String, Double> factors = new LinkedHashMap<>();
        top.take("likelier").ifPresent(node -> {
            Fields each = Fields.of(node, "likelier", problems);
            for (NodeTuple tuple : each.node().getValue()) {
                String fault = FaultReader.id(tuple);
                if (!FindingKnowledge.shipped().faults().containsKey(fault)) {
                    problems.fault(
                            tuple.getKeyNode(),
                            Wording.shown(fault) + " is no fault",
                            Wording.maybe(fault, FindingKnowledge.shipped().faults().keySet(), ""));
                }
                each.number(fault, 0.001, 1000).ifPresent(factor -> factors.put(fault, factor));
            }
        });
        return factors;
    }

    private static Set<String> tools(Fields top) {
        return new LinkedHashSet<>(top.has("tools") ? top.texts("tools") : List.of());
    }
}
