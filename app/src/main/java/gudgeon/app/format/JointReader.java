package gudgeon.app.format;

import gudgeon.core.engine.Condition;
import gudgeon.core.engine.Fastener;
import gudgeon.core.engine.FastenerKind;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.JointKind;
import gudgeon.core.engine.Makeup;
import gudgeon.core.engine.Precedence;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.Spend;
import gudgeon.core.engine.UndoTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Reads one joint: what it is, when it may be undone, what it takes. */
final class JointReader {
    private static final double BUILD_SHARE = 1.3;
    private static final double HOLDS_kg = 3;
    private static final Quantities.Range HOLDS =
            new Quantities.Range(0, 100, "a hose or loom holds at most 100 kg, typically 3 kg");

    private final Scope scope;
    private final Problems problems;
    private final CircuitTable circuits;
    private final ConditionReader conditions;
    private final FastenerReader fastenerReader;
    private final Tightening tightening;
    private final Spends spends;
    private final CrackLoose crackLoose;

    JointReader(Scope scope, CircuitTable circuits) {
        this.scope = scope;
        this.problems = scope.problems();
        this.circuits = circuits;
        this.conditions = new ConditionReader(scope);
        this.fastenerReader = new FastenerReader(scope);
        this.tightening = new Tightening(scope);
        this.spends = new Spends(scope);
        this.crackLoose = new CrackLoose(scope);
    }

    /** What the key {@code hold} says: joints that must be intact, or a tool. */
    record Holding(Joint.Hold hold, Optional<String> tool) {}

    /** Reads a joint into the lists: itself, its crack-loose operation, its written order. */
    void read(Copies.Entry entry, List<Joint> joints, List<Ready> ready, List<Precedence> precedences) {
        Fields fields = scope.fields(entry.body(), Scope.called(Names.Kind.JOINT, entry.id()));
        fields.has("each");
        String id = entry.id();
        for (String key : List.of("access", "access_build", "opens", "rests", "between", "needs")) {
            scope.names().place(Names.Kind.JOINT, id, key, fields.at(key));
        }
        List<String> between = between(fields, id);
        String name = fields.text("name", Scope.nameOf(id, between));
        FastenerReader.Fastening fastening = fastenerReader.read(fields, id);
        JointKind kind = kind(fields, fastening.fasteners());
        Optional<Joint.Hang> hang = hang(fields);
        Holding holding = holding(fields);
        boolean cracked = fields.has("crack_loose");
        Joint.Freedom freedom = freedom(fields, id, cracked ? Joint.Hold.NONE : holding.hold());
        Optional<String> held = cracked ? Optional.empty() : holding.tool();
        List<String> tools = tools(fields, fastening, held);
        List<String> buildTools = fields.has("build_tools") ? buildTools(fields, fastening, held) : tools;
        Joint.Work work = work(fields, kind, fastening.fasteners(), tools, buildTools);
        Makeup makeup = makeup(fields, fastening);
        scope.names()
                .resolveAll(fields.list("before"), Names.Kind.JOINT, Names.Kind.READY)
                .forEach(then -> precedences.add(new Precedence(id, then, "written with " + id)));
        Joint joint = new Joint(id, name, kind, between, hang, freedom, work, makeup);
        crackLoose.read(fields, joint, holding).ifPresent(ready::add);
        fields.close();
        joints.add(joint);
    }

    private List<String> between(Fields fields, String id) {
        List<String> between = fields.need("between").isPresent() ? scope.parts(fields, "between") : List.of();
        if (fields.has("between")
                && between.size() == 1
                && fields.list("between").size() < 2) {
            problems.fault(fields.at("between"), "the joint " + id + " holds only one part", "name two or more parts");
        }
        return between;
    }

    private JointKind kind(Fields fields, List<Fastener> fasteners) {
        List<String> words =
                Arrays.stream(JointKind.values()).map(JointKind::word).toList();
        String fallback =
                fasteners.isEmpty() ? "" : usual(fasteners.get(0).kind()).word();
        if (fasteners.isEmpty() && !fields.has("kind")) {
            problems.fault(
                    fields.node(),
                    fields.owner() + " has neither 'fasteners' nor 'kind'",
                    "add fasteners, or kind: one of " + String.join(", ", words));
        }
        String word = fields.word("kind", fallback, words);
        JointKind kind = Arrays.stream(JointKind.values())
                .filter(candidate -> candidate.word().equals(word))
                .findFirst()
                .orElse(JointKind.BOLTED);
        if (kind == JointKind.BOLTED && fasteners.isEmpty() && fields.has("kind") && !fields.has("undo")) {
            problems.fault(
                    fields.at("kind"),
                    "a bolted joint without fasteners",
                    "add fasteners, or the time to undo it as undo");
        }
        return kind;
    }

    private static JointKind usual(FastenerKind kind) {
        return switch (kind) {
            case WORM_CLIP, SPRING_CLIP -> JointKind.HOSE_CLIP;
            case UNION_NUT -> JointKind.UNION_NUT;
            case BANJO_BOLT -> JointKind.BANJO;
            case CLIP -> JointKind.SNAP;
            default -> JointKind.BOLTED;
        };
    }

    private Optional<Joint.Hang> hang(Fields fields) {
        boolean flexible = fields.yes("flexible");
        boolean isShort = fields.yes("short");
        Optional<String> strap =
                fields.take("strap").flatMap(node -> scope.names().resolveOne(node, Names.Kind.READY));
        Optional<Quantities.Measure> holds = fields.measure("holds", QuantityKind.MASS, HOLDS);
        if (fields.has("flexible") && !flexible && (isShort || fields.has("strap") || fields.has("holds"))) {
            problems.fault(
                    fields.at("flexible"),
                    "a joint that is not flexible, but something may hang on it",
                    "flexible: true, or take holds, short and strap out");
        }
        if (isShort && fields.has("holds")) {
            problems.fault(
                    fields.at("short"),
                    "short and holds together",
                    "a short joint holds nothing; take one of them out");
        }
        if (!flexible && !isShort && !fields.has("strap") && !fields.has("holds")) {
            return Optional.empty();
        }
        double holds_kg = isShort ? 0 : holds.map(Quantities.Measure::value).orElse(HOLDS_kg);
        return Optional.of(new Joint.Hang(holds_kg, strap));
    }

    private Holding holding(Fields fields) {
        return fields.take("hold")
                .map(node -> {
                    Fields hold = scope.fields(node, "hold");
                    Optional<String> tool = Optional.of(hold.text("tool", "")).filter(text -> !text.isEmpty());
                    List<List<String>> alternatives = hold.list("intact").stream()
                            .map(member -> member instanceof SequenceNode together
                                    ? scope.names().resolveAll(together.getValue(), Names.Kind.JOINT)
                                    : scope.names().resolve(member, Names.Kind.JOINT))
                            .filter(alternative -> !alternative.isEmpty())
                            .toList();
                    if (hold.has("tool") == hold.has("intact")) {
                        problems.fault(
                                node,
                                "hold needs a tool or what must be intact, one of them",
                                "hold: { tool: NAME } or { intact: [joint] }");
                    }
                    hold.close();
                    return new Holding(new Joint.Hold(alternatives), tool);
                })
                .orElse(new Holding(Joint.Hold.NONE, Optional.empty()));
    }

    private Joint.Freedom freedom(Fields fields, String id, Joint.Hold hold) {
        Condition access = conditions.read(fields, "access");
        Condition accessBuild = conditions.read(fields, "access_build");
        List<String> needs = new ArrayList<>(scope.ready(fields, "needs"));
        if (CrackLoose.wanted(fields) && scope.names().has(Names.Kind.READY, CrackLoose.PREFIX + id)) {
            needs.add(CrackLoose.PREFIX + id);
        }
        List<String> opens = scope.names().resolveAll(fields.list("opens"), Names.Kind.CIRCUIT);
        boolean licensed = fields.yes("licensed") || opens.stream().anyMatch(circuits::licensed);
        return new Joint.Freedom(
                access,
                accessBuild,
                needs,
                opens,
                circuits.drainedBy(id),
                licensed,
                scope.engineState(fields),
                hold,
                fields.yes("rests"));
    }

    private static List<String> tools(Fields fields, FastenerReader.Fastening fastening, Optional<String> holdingTool) {
        Set<String> tools = new LinkedHashSet<>();
        boolean only = fields.has("only_tools");
        List<String> written = fields.texts(only ? "only_tools" : "tools");
        if (!only) {
            tools.addAll(fastening.tools());
        }
        tools.addAll(written);
        holdingTool.ifPresent(tools::add);
        return List.copyOf(tools);
    }

    /** What the drives ask for, with what is written for the way back in place of {@code tools}. */
    private static List<String> buildTools(
            Fields fields, FastenerReader.Fastening fastening, Optional<String> holdingTool) {
        Set<String> tools = new LinkedHashSet<>(fastening.tools());
        tools.addAll(fields.texts("build_tools"));
        holdingTool.ifPresent(tools::add);
        return List.copyOf(tools);
    }

    private Joint.Work work(
            Fields fields, JointKind kind, List<Fastener> fasteners, List<String> tools, List<String> buildTools) {
        if (fields.has("tools") && fields.has("only_tools")) {
            problems.fault(
                    fields.at("only_tools"),
                    "tools and only_tools together",
                    "only_tools replaces all others; take tools out");
        }
        double difficulty = fields.number("difficulty", 0.1, 20).orElse(1);
        if (fields.has("difficulty") && fields.has("undo")) {
            problems.warning(
                    fields.at("difficulty"),
                    "difficulty says nothing beside undo",
                    "it multiplies the default time only");
        }
        long usual = fasteners.isEmpty()
                ? kind.seconds()
                : fasteners.stream()
                        .mapToLong(fastener -> fastener.kind().seconds())
                        .sum();
        long undo = fields.seconds("undo", Scope.WORK_TIME).orElse(Math.round(usual * difficulty));
        long build = fields.seconds("build", Scope.WORK_TIME).orElse(Math.round(undo * BUILD_SHARE));
        return new Joint.Work(
                scope.zone(fields, scope.startZone()),
                tools,
                buildTools,
                undoTime(fields, undo),
                build,
                cut(fields),
                scope.cautions(fields, "cautions"),
                fields.text("note", ""),
                fields.yes("photo"));
    }

    private UndoTime undoTime(Fields fields, long undo) {
        return fields.take("seizure")
                .map(node -> {
                    Fields seizure = scope.fields(node, "seizure");
                    seizure.need("chance");
                    seizure.need("time");
                    double chance = seizure.measure("chance", QuantityKind.SHARE, Scope.SHARE)
                            .map(measure -> measure.value() / 100)
                            .orElse(0.0);
                    long time = seizure.seconds("time", Scope.LONG_TIME).orElse(0L);
                    UndoTime result = new UndoTime(undo, chance, time, seizure.text("risk", ""));
                    seizure.close();
                    return result;
                })
                .orElse(new UndoTime(undo, 0, 0, ""));
    }

    private Optional<Joint.Cut> cut(Fields fields) {
        return fields.take("cut").map(node -> {
            Fields cut = scope.fields(node, "cut");
            cut.need("time");
            long time = cut.seconds("time", Scope.WORK_TIME).orElse(0L);
            List<Spend> destroys = Spends.merged(spends.list(cut, "destroys"));
            Joint.Cut result = new Joint.Cut(time, destroys, cut.texts("tools"));
            cut.close();
            return result;
        });
    }

    private Makeup makeup(Fields fields, FastenerReader.Fastening fastening) {
        List<Spend> destroyed = new ArrayList<>(fastening.spends());
        destroyed.addAll(spends.seals(fields));
        destroyed.addAll(spends.list(fields, "destroys"));
        int count = fastening.fasteners().size();
        return new Makeup(
                fastening.fasteners(),
                Spends.merged(destroyed),
                tightening.stages(fields, fastening.fasteners()),
                tightening.pattern(fields, "pattern", count, fastening.spots()),
                tightening.loosen(fields, count, fastening.spots()),
                sealant(fields),
                BuildMarks.read(fields, "after", scope));
    }

    private Optional<Makeup.Sealant> sealant(Fields fields) {
        return fields.take("sealant").map(node -> {
            Fields sealant = scope.fields(node, "sealant");
            String spec = sealant.need("spec")
                    .flatMap(value -> Fields.textOf(value, problems))
                    .orElse("");
            Makeup.Sealant result = new Makeup.Sealant(
                    spec,
                    sealant.seconds("open", Scope.LONG_TIME).orElse(0L),
                    sealant.seconds("cure", Scope.LONG_TIME).orElse(0L));
            sealant.close();
            return result;
        });
    }
}
