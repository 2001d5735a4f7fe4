package gudgeon.app.format;

import gudgeon.core.engine.Check;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Feature;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Level;
import gudgeon.core.engine.Part;
import gudgeon.core.engine.Precedence;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.Zone;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** Reads the whole document in two passes: first every id, then everything that names ids. */
final class EngineReader {
    private final Problems problems;
    private final Names names;
    private final Map<Names.Kind, List<Copies.Entry>> entries = new EnumMap<>(Names.Kind.class);

    EngineReader(Problems problems) {
        this.problems = problems;
        this.names = new Names(problems);
    }

    Names names() {
        return names;
    }

    /** The engine; empty when a fault was found. */
    Optional<Engine> read(MappingNode root, String sha256) {
        Fields top = Fields.of(root, "an engine file", problems);
        format(top);
        HeadReader headReader = new HeadReader(problems);
        Optional<Node> engine = top.need("engine");
        HeadReader.Head head = engine.map(node -> headReader.head(Fields.of(node, "engine", problems)))
                .orElseGet(() -> nameless(root));
        claimAll(top, head);
        Optional<Node> order = top.take("order");
        Optional<Node> levels = top.take("levels");
        top.close();
        Scope scope = new Scope(problems, names, startZone(head));
        List<Zone> zones = zones(headReader, scope);
        String base = head.base()
                .flatMap(node -> names.resolveOne(node, Names.Kind.PART))
                .orElse("");
        Body body = new Body(scope);
        order.ifPresent(body::order);
        LevelReader levelReader = new LevelReader(scope, base);
        List<Level> depths = levels.map(levelReader::read).orElse(List.of());
        if (problems.anyFault()) {
            return Optional.empty();
        }
        Engine.Identity identity =
                new Engine.Identity(head.id(), head.name(), 1, sha256, head.cylinders(), head.facts(), head.geometry());
        Engine.Workplace workplace =
                new Engine.Workplace(base, scope.startZone(), head.toolChangeSeconds(), zones, head.ways());
        return Optional.of(body.engine(identity, workplace, depths));
    }

    /** Stands in for a missing head, whose absence is told, so that the rest is read too. */
    private HeadReader.Head nameless(MappingNode root) {
        Problems untold = new Problems(problems.file());
        return new HeadReader(untold)
                .head(Fields.of(new ScalarNode(root.getTag(), "", ScalarStyle.PLAIN), "engine", untold));
    }

    private void format(Fields top) {
        Optional<Node> format = top.need("format");
        if (format.isPresent()
                && !(format.get() instanceof ScalarNode scalar
                        && scalar.getValue().equals("1"))) {
            problems.fault(format.get(), "this version of the format is not known", "write format: 1");
        }
    }

    private void claimAll(Fields top, HeadReader.Head head) {
        Copies copies = new Copies(head.cylinders(), problems);
        claim(top, "zones", Names.Kind.ZONE, copies);
        claim(top, "circuits", Names.Kind.CIRCUIT, copies);
        claim(top, "ready", Names.Kind.READY, copies);
        claim(top, "parts", Names.Kind.PART, copies);
        claim(top, "joints", Names.Kind.JOINT, copies);
        claim(top, "features", Names.Kind.FEATURE, copies);
        claim(top, "checks", Names.Kind.CHECK, copies);
        if (!names.has(Names.Kind.ZONE, Zone.BENCH)) {
            names.claim(Names.Kind.ZONE, Zone.BENCH, top.node());
        }
        for (Copies.Entry joint : of(Names.Kind.JOINT)) {
            if (CrackLoose.wanted(joint.body())) {
                names.claim(Names.Kind.READY, CrackLoose.PREFIX + joint.id(), joint.key());
            }
        }
        for (Copies.Entry circuit : of(Names.Kind.CIRCUIT)) {
            drainNames(circuit.body());
        }
    }

    private void claim(Fields top, String key, Names.Kind kind, Copies copies) {
        boolean needed = kind == Names.Kind.PART || kind == Names.Kind.JOINT || kind == Names.Kind.ZONE;
        Optional<Node> section = needed ? top.need(key) : top.take(key);
        List<Copies.Entry> claimed = section.map(node -> copies.of(node, kind.words())).orElse(List.of()).stream()
                .filter(entry -> names.claim(kind, entry.id(), entry.key()))
                .toList();
        entries.put(kind, claimed);
    }

    private List<Copies.Entry> of(Names.Kind kind) {
        return entries.getOrDefault(kind, List.of());
    }

    /** Claims the id of every drain; whether its joint exists is said when the circuit is read. */
    private void drainNames(Node circuit) {
        Problems quiet = new Problems(problems.file());
        if (!(circuit instanceof MappingNode)) {
            return;
        }
        for (Node drain : Fields.of(circuit, "a circuit", quiet).list("drains")) {
            if (drain instanceof MappingNode) {
                Fields.of(drain, "a drain", quiet)
                        .take("joint")
                        .flatMap(node -> Fields.textOf(node, quiet))
                        .ifPresent(joint -> {
                            String id = CircuitTable.PREFIX + joint;
                            if (names.has(Names.Kind.JOINT, joint)) {
                                names.derive(id, drain);
                            }
                        });
            }
        }
    }

    private String startZone(HeadReader.Head head) {
        Optional<String> first =
                of(Names.Kind.ZONE).stream().map(Copies.Entry::id).findFirst();
        return head.start()
                .flatMap(node -> names.resolveOne(node, Names.Kind.ZONE))
                .or(() -> first)
                .orElse(Zone.BENCH);
    }

    private List<Zone> zones(HeadReader headReader, Scope scope) {
        List<Zone> zones = new ArrayList<>();
        of(Names.Kind.ZONE).forEach(entry -> zones.add(headReader.zone(entry, scope)));
        if (zones.stream().noneMatch(zone -> zone.id().equals(Zone.BENCH))) {
            zones.add(HeadReader.bench());
        }
        return zones;
    }

    /** Everything between the head and the end of the file. */
    private final class Body {
        private final Scope scope;
        private final CircuitTable circuits;
        private final List<Part> parts = new ArrayList<>();
        private final List<Joint> joints = new ArrayList<>();
        private final List<Ready> ready = new ArrayList<>();
        private final List<Feature> features = new ArrayList<>();
        private final List<Check> checks = new ArrayList<>();
        private final List<Precedence> precedences = new ArrayList<>();

        Body(Scope scope) {
            this.scope = scope;
            this.circuits = new CircuitTable(scope);
            of(Names.Kind.CIRCUIT).forEach(circuits::read);
            ReadyReader readyReader = new ReadyReader(scope);
            of(Names.Kind.READY).forEach(entry -> ready.add(readyReader.read(entry, precedences)));
            PartReader partReader = new PartReader(scope);
            of(Names.Kind.PART).forEach(entry -> parts.add(partReader.read(entry)));
            JointReader jointReader = new JointReader(scope, circuits);
            List<Ready> cracked = new ArrayList<>();
            of(Names.Kind.JOINT).forEach(entry -> jointReader.read(entry, joints, cracked, precedences));
            ready.addAll(circuits.operations(joints));
            ready.addAll(cracked);
            circuits.wetOnesCanBeEmptied(joints);
            circuits.openingsAreOpened(joints);
            FeatureReader featureReader = new FeatureReader(scope);
            of(Names.Kind.FEATURE).forEach(entry -> features.add(featureReader.read(entry)));
            CheckReader checkReader = new CheckReader(scope);
            of(Names.Kind.CHECK).forEach(entry -> checks.add(checkReader.read(entry)));
        }

        void order(Node node) {
            for (Node member : Fields.listOf(node, "order", problems)) {
                Fields fields = scope.fields(member, "an entry of order");
                List<String> first = operations(fields, "first");
                List<String> then = operations(fields, "then");
                String why = fields.need("why")
                        .flatMap(value -> Fields.textOf(value, problems))
                        .orElse("");
                fields.close();
                first.forEach(a -> then.forEach(b -> precedences.add(new Precedence(a, b, why))));
            }
        }

        private List<String> operations(Fields fields, String key) {
            return fields.need(key)
                    .map(node -> names.resolve(node, Names.Kind.JOINT, Names.Kind.READY))
                    .orElse(List.of());
        }

        Engine engine(Engine.Identity identity, Engine.Workplace workplace, List<Level> levels) {
            List<Precedence> all = new ArrayList<>(precedences);
            all.addAll(WarmFirst.derive(joints, ready));
            return new Engine(
                    identity,
                    workplace,
                    parts,
                    joints,
                    circuits.circuits(),
                    ready,
                    features,
                    new Engine.BuildRules(all, checks, levels));
        }
    }
}
