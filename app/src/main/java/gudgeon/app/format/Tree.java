package gudgeon.app.format;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.composer.Composer;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.parser.Parser;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/**
 * The second gate of a file: its text must be one plain YAML document of bounded depth, without anchors, aliases, tags,
 * merge keys or repeated keys. Every event of the parser is looked at before anything is built from it, so that memory and
 * time stay bounded.
 */
final class Tree {
    /** Deeper nesting is refused; an engine file needs about eight levels. */
    static final int MOST_DEPTH = 50;

    /** Far more than any engine needs; it bounds the time that a hostile file can take. */
    static final int MOST_EVENTS = 400_000;

    private static final LoadSettings SETTINGS = LoadSettings.builder()
            .setCodePointLimit(PlainText.MOST_BYTES)
            .setMaxAliasesForCollections(0)
            .setAllowRecursiveKeys(false)
            .setUseMarks(true)
            .build();

    private Tree() {}

    /** The document's root, a mapping; empty when it was refused. */
    static Optional<MappingNode> of(String text, Problems problems) {
        try {
            PlainEvents events = new PlainEvents(new ParserImpl(SETTINGS, new StreamReader(SETTINGS, text)), problems);
            Optional<Node> root = new Composer(SETTINGS, events).getSingleNode();
            if (root.isEmpty()) {
                problems.add(Severity.FAULT, 0, 0, "the file holds nothing", "start it with 'format: 1'");
                return Optional.empty();
            }
            if (!(root.get() instanceof MappingNode mapping)) {
                problems.fault(
                        root.get(), "the file is not a list of keys", "start it with 'format: 1', then 'engine:'");
                return Optional.empty();
            }
            repeatedKeys(mapping, problems);
            return Optional.of(mapping);
        } catch (Refused e) {
            return Optional.empty();
        } catch (MarkedYamlEngineException e) {
            problems.fault(e.getProblemMark().or(e::getContextMark), Wording.ofYaml(e), Wording.adviceOfYaml(e));
            return Optional.empty();
        } catch (YamlEngineException e) {
            problems.add(
                    Severity.FAULT, 0, 0, "this is not YAML: " + Wording.firstLine(String.valueOf(e.getMessage())), "");
            return Optional.empty();
        }
    }

    /** The file was refused, and the problem is noted. */
    private static final class Refused extends YamlEngineException {
        private static final long serialVersionUID = 1;

        Refused() {
            super("refused");
        }
    }

    /** The parser's events, each looked at before anything is built from it. */
    private static final class PlainEvents implements Parser {
        private final Parser parser;
        private final Problems problems;
        private int depth;
        private int documents;
        private int events;

        PlainEvents(Parser parser, Problems problems) {
            this.parser = parser;
            this.problems = problems;
        }

        @Override
        public boolean checkEvent(Event.ID choice) {
            return parser.checkEvent(choice);
        }

        @Override
        public Event peekEvent() {
            return look(parser.peekEvent());
        }

        @Override
        public boolean hasNext() {
            return parser.hasNext();
        }

        @Override
        public Event next() {
            Event event = look(parser.next());
            if (event instanceof CollectionStartEvent) {
                depth++;
            } else if (event instanceof CollectionEndEvent) {
                depth--;
            } else if (event instanceof DocumentStartEvent) {
                documents++;
            }
            events++;
            return event;
        }

        private Event look(Event event) {
            if (event instanceof DocumentStartEvent && documents > 0) {
                refuse(event, "a second document starts here", "an engine file is one document; take the --- out");
            }
            if (event instanceof CollectionStartEvent && depth == MOST_DEPTH) {
                refuse(
                        event,
                        "nested more than " + MOST_DEPTH + " levels deep",
                        "an engine file needs about eight levels");
            }
            if (events > MOST_EVENTS) {
                refuse(
                        event,
                        "more keys and values than are read",
                        "an engine file has some ten thousand. Maybe it is another file?");
            }
            if (event instanceof NodeEvent node && !plainNode(node, problems)) {
                throw new Refused();
            }
            return event;
        }

        private void refuse(Event event, String what, String wouldBeRight) {
            problems.fault(event.getStartMark(), what, wouldBeRight);
            throw new Refused();
        }
    }

    private static boolean plainNode(NodeEvent node, Problems problems) {
        Optional<Mark> at = node.getStartMark();
        if (node instanceof AliasEvent) {
            problems.fault(at, "an alias (*name)", "aliases are not used in engine files; write it out, or use 'each'");
            return false;
        }
        if (node.getAnchor().isPresent()) {
            problems.fault(
                    at,
                    "an anchor (&name)",
                    "anchors and aliases are not used in engine files; write it out, or use 'each'");
            return false;
        }
        Optional<String> tag = switch (node) {
            case ScalarEvent scalar -> scalar.getTag();
            case CollectionStartEvent start -> start.getTag();
            default -> Optional.empty();
        };
        if (tag.isPresent()) {
            problems.fault(
                    at,
                    "a YAML tag (" + Wording.shown(tag.get()) + ")",
                    "tags are not used in engine files; take it out");
            return false;
        }
        return true;
    }

    private static void repeatedKeys(Node node, Problems problems) {
        switch (node) {
            case MappingNode mapping -> {
                Map<String, Node> first = new HashMap<>();
                for (NodeTuple tuple : mapping.getValue()) {
                    key(tuple.getKeyNode(), first, problems);
                    repeatedKeys(tuple.getValueNode(), problems);
                }
            }
            case SequenceNode sequence -> sequence.getValue().forEach(child -> repeatedKeys(child, problems));
            default -> {}
        }
    }

    private static void key(Node key, Map<String, Node> first, Problems problems) {
        if (!(key instanceof ScalarNode scalar)) {
            problems.fault(key, "a key that is not a word", "write a plain word before the colon");
            return;
        }
        if (scalar.getValue().equals("<<") && scalar.isPlain()) {
            problems.fault(key, "a merge key (<<)", "merge keys are not used in engine files; write it out");
        }
        Node earlier = first.putIfAbsent(scalar.getValue(), key);
        if (earlier != null) {
            problems.fault(
                    key,
                    "the key " + Wording.shown(scalar.getValue()) + " stands twice, in line "
                            + Problems.line(earlier.getStartMark()) + " and in line "
                            + Problems.line(key.getStartMark()),
                    "keep one of them");
        }
    }
}
