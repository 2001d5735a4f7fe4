package gudgeon.app.format;

import gudgeon.core.finding.Knowledge;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.snakeyaml.engine.v2.nodes.MappingNode;

/** What is known about faults, findings and tests: files that come with the program, in words of a mechanic. */
public final class FindingKnowledge {
    private static final String FOLDER = "/gudgeon/finding/";

    private FindingKnowledge() {}

    /**
     * What came of reading it.
     *
     * @param knowledge when every file is sound
     * @param problems everything found wrong, with its place
     */
    public record Known(Optional<Knowledge> knowledge, List<Problem> problems) {
        public Known {
            problems = List.copyOf(problems);
        }
    }

    /** What comes with the program, read once. */
    public static Knowledge shipped() {
        return Shipped.KNOWLEDGE;
    }

    /** The codes that come with the program. */
    public static TroubleCodes codes() {
        return Shipped.CODES;
    }

    /** Reads the four files {@code faults.yaml}, {@code findings.yaml}, {@code tests.yaml} and {@code physics.yaml}. */
    public static Known read(Function<String, byte[]> files) {
        List<Problem> problems = new ArrayList<>();
        Optional<MappingNode> faults = root("faults.yaml", files, problems);
        Optional<MappingNode> findings = root("findings.yaml", files, problems);
        Optional<MappingNode> tests = root("tests.yaml", files, problems);
        Optional<MappingNode> physics = root("physics.yaml", files, problems);
        if (!problems.isEmpty()) {
            return new Known(Optional.empty(), problems);
        }
        FaultReader faultReader = new FaultReader(new Problems("faults.yaml"));
        TestReader testReader = new TestReader(new Problems("tests.yaml"));
        FindingReader findingReader = new FindingReader(new Problems("findings.yaml"));
        PhysicsReader physicsReader = new PhysicsReader(new Problems("physics.yaml"));
        var knownFaults = faultReader.read(faults.orElseThrow());
        var knownTests = testReader.read(tests.orElseThrow());
        var knownFindings = findingReader.read(findings.orElseThrow(), knownFaults.keySet(), knownTests.keySet());
        var knownPhysics = physicsReader.read(physics.orElseThrow());
        for (Problems each : List.of(
                faultReader.problems(), testReader.problems(), findingReader.problems(), physicsReader.problems())) {
            problems.addAll(each.inFileOrder());
        }
        if (!problems.isEmpty() || knownPhysics.isEmpty()) {
            return new Known(Optional.empty(), problems);
        }
        return new Known(
                Optional.of(new Knowledge(
                        knownFaults, knownFindings, knownTests, testReader.ready(), knownPhysics.get())),
                problems);
    }

    private static Optional<MappingNode> root(
            String name, Function<String, byte[]> files, List<Problem> problems) {
        Problems own = new Problems(name);
        Optional<MappingNode> root = PlainText.of(files.apply(name), own).flatMap(text -> Tree.of(text, own));
        problems.addAll(own.inFileOrder());
        return root;
    }

    static byte[] shippedFile(String name) {
        try (InputStream bytes = FindingKnowledge.class.getResourceAsStream(FOLDER + name)) {
            if (bytes == null) {
                throw new IllegalStateException("the program was built without " + FOLDER + name);
            }
            return bytes.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + FOLDER + name, e);
        }
    }

    /** Read when first asked for. */
    private static final class Shipped {
        private static final Knowledge KNOWLEDGE = knowledge();
        private static final TroubleCodes CODES = TroubleCodes.read(shippedFile("codes.yaml"));

        private static Knowledge knowledge() {
            Known known = read(FindingKnowledge::shippedFile);
            return known.knowledge()
                    .orElseThrow(() -> new IllegalStateException(String.join(
                            "\n", known.problems().stream().map(Problem::text).toList())));
        }
    }
}
