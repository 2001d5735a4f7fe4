package gudgeon.app.format;

import gudgeon.core.book.Setup;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Present;
import org.snakeyaml.engine.v2.api.lowlevel.Serialize;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.composer.Composer;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/**
 * The text of an engine file, put right in places. Keys keep their order and scalars their spelling; comments are lost. A new
 * joint or part is written with one key to a line, so that a problem of it names its field.
 */
public final class EngineText {
    private static final DumpSettings PLAIN = DumpSettings.builder()
            .setWidth(4000)
            .setIndicatorIndent(0)
            .setSplitLines(false)
            .build();

    private EngineText() {}

    /**
     * A file after corrections.
     *
     * @param text the whole file
     * @param refused patches that do not fit: what they replace is not what stands there, or their path leads nowhere
     */
    public record Corrected(String text, List<Setup.Patch> refused) {
        public Corrected {
            refused = List.copyOf(refused);
        }
    }

    /** The file with patches, in order. A text that is no plain file is given back as it is, with all patches refused. */
    public static Corrected correct(String text, List<Setup.Patch> patches) {
        if (patches.isEmpty()) {
            return new Corrected(text, List.of());
        }
        Optional<MappingNode> root = Tree.of(text, new Problems("file"));
        if (root.isEmpty()) {
            return new Corrected(text, patches);
        }
        List<Setup.Patch> refused = new ArrayList<>();
        for (Setup.Patch patch : patches) {
            if (!apply(root.get(), patch)) {
                refused.add(patch);
            }
        }
        return new Corrected(written(root.get()), refused);
    }

    /** What stands at a path, as YAML; empty when nothing does. */
    public static Optional<String> at(String text, String path) {
        return Tree.of(text, new Problems("file"))
                .flatMap(root -> find(root, keys(path)))
                .map(EngineText::written);
    }

    /** Hash of a file's bytes, lower-case hexadecimal. */
    public static String sha256(String text) {
        return sha256(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Hash of bytes, lower-case hexadecimal. */
    public static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** A text as a YAML scalar in double quotes. */
    public static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '"', '\\' -> quoted.append('\\').append(c);
                case '\n' -> quoted.append("\\n");
                case '\r' -> quoted.append("\\r");
                case '\t' -> quoted.append("\\t");
                default -> quoted.append(c < ' ' || c == 0x7f ? ' ' : c);
            }
        }
        return quoted.append('"').toString();
    }

    private static String written(Node node) {
        return new Present(PLAIN)
                .emitToString(new Serialize(PLAIN).serializeOne(node).iterator());
    }

    private static List<String> keys(String path) {
        return Arrays.asList(path.split("/", -1));
    }

    private static Optional<Node> find(Node from, List<String> keys) {
        Node at = from;
        for (String key : keys) {
            Optional<Node> next = child(at, key);
            if (next.isEmpty()) {
                return Optional.empty();
            }
            at = next.get();
        }
        return Optional.of(at);
    }

    private static Optional<Node> child(Node node, String key) {
        if (node instanceof MappingNode mapping) {
            return mapping.getValue().stream()
                    .filter(tuple -> isKey(tuple, key))
                    .map(NodeTuple::getValueNode)
                    .findFirst();
        }
        if (node instanceof SequenceNode sequence && key.matches("[0-9]{1,4}")) {
            int index = Integer.parseInt(key);
            return index < sequence.getValue().size()
                    ? Optional.of(sequence.getValue().get(index))
                    : Optional.empty();
        }
        return Optional.empty();
    }

    private static boolean isKey(NodeTuple tuple, String key) {
        return tuple.getKeyNode() instanceof ScalarNode scalar
                && scalar.getValue().equals(key);
    }

    private static boolean apply(MappingNode root, Setup.Patch patch) {
        List<String> keys = keys(patch.path());
        Optional<Node> parent = find(root, keys.subList(0, keys.size() - 1));
        if (parent.isEmpty() && keys.size() == 2 && !patch.now().isEmpty()) {
            parent = Optional.of(section(root, keys.getFirst()));
        }
        if (parent.isEmpty() || !stands(child(parent.get(), keys.getLast()), patch.old())) {
            return false;
        }
        if (patch.now().isEmpty()) {
            return parent.get() instanceof MappingNode mapping
                    && mapping.getValue().removeIf(tuple -> isKey(tuple, keys.getLast()));
        }
        Optional<Node> fresh = parsed(patch.now());
        return fresh.isPresent() && put(parent.get(), keys.getLast(), fresh.get());
    }

    private static MappingNode section(MappingNode root, String key) {
        MappingNode section = new MappingNode(Tag.MAP, new ArrayList<>(), FlowStyle.BLOCK);
        root.getValue().add(new NodeTuple(plain(key), section));
        return section;
    }

    private static ScalarNode plain(String text) {
        return new ScalarNode(Tag.STR, text, ScalarStyle.PLAIN);
    }

    private static boolean stands(Optional<Node> there, String old) {
        if (there.isEmpty() || old.isEmpty()) {
            return there.isEmpty() && old.isEmpty();
        }
        String now = written(there.get());
        return now.strip().equals(old.strip())
                || parsed(old).map(EngineText::written).filter(now::equals).isPresent();
    }

    private static Optional<Node> parsed(String yaml) {
        try {
            LoadSettings settings = LoadSettings.builder().build();
            return new Composer(settings, new ParserImpl(settings, new StreamReader(settings, yaml))).getSingleNode();
        } catch (YamlEngineException e) {
            return Optional.empty();
        }
    }

    private static boolean put(Node parent, String key, Node fresh) {
        if (parent instanceof MappingNode mapping) {
            List<NodeTuple> tuples = mapping.getValue();
            for (int i = 0; i < tuples.size(); i++) {
                if (isKey(tuples.get(i), key)) {
                    tuples.set(i, new NodeTuple(tuples.get(i).getKeyNode(), fresh));
                    return true;
                }
            }
            tuples.add(new NodeTuple(plain(key), fresh));
            return true;
        }
        if (parent instanceof SequenceNode sequence && key.matches("[0-9]{1,4}")) {
            int index = Integer.parseInt(key);
            if (index < sequence.getValue().size()) {
                sequence.getValue().set(index, fresh);
                return true;
            }
            if (index == sequence.getValue().size()) {
                sequence.getValue().add(fresh);
                return true;
            }
        }
        return false;
    }
}
