package gudgeon.core.planning;

import gudgeon.core.engine.CircuitKind;
import gudgeon.core.engine.Condition;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.engine.Literal;
import gudgeon.core.engine.ReadyKind;
import gudgeon.core.engine.Spend;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;

/**
 * Small random engines with something of everything that docs/planning.md defines: alternatives, joint conditions, hoses
 * that hold or not, straps, joints of three parts, drains, make-safe, lift conditions and cycles of them, ways of lifting,
 * rests, supports, crack loose, pairs, zones, tools, money. The same seed gives the same engine on every machine.
 */
final class RandomEngines {
    /** An engine and what is asked of it. */
    record Case(long seed, Engine engine, StripRequest request) {}

    private static final List<String> TOOLS = List.of("socket 10 mm", "socket 13 mm", "key 6 mm", "pliers");
    private static final List<String> ZONES = List.of("top", "top", "top", "side", "underneath");
    private static final double[] MASSES = {0.5, 1, 1, 2, 2, 2, 4, 4, 8, 12, 32};
    private static final double[] HOLDS = {0, 1, 3, 10, 10, 60};

    private final long seed;
    private final Random random;
    private final EngineBuilder builder = new EngineBuilder("stand");
    private final List<String> parts = new ArrayList<>();
    private final List<PartDraft> partDrafts = new ArrayList<>();
    private final List<JointDraft> joints = new ArrayList<>();
    private int readyLeft;

    private RandomEngines(long seed) {
        this.seed = seed;
        this.random = new Random(seed * 0x9E3779B97F4A7C15L + 1);
        this.readyLeft = random.nextInt(5);
    }

    /** Four to eight joints, three to seven parts. */
    static Case small(long seed) {
        return new RandomEngines(seed).smallCase();
    }

    private boolean chance(int percent) {
        return random.nextInt(100) < percent;
    }

    private <T> T pick(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    private long seconds() {
        return 10L * (1 + random.nextInt(30)) + random.nextInt(3);
    }

    private Case smallCase() {
        builder.zone("side", 20, 10).zone("underneath", 60, 40, "raised-machine");
        builder.way("alone", 25, 60).way("helper", 50, 120);
        int count = 2 + random.nextInt(3) + random.nextInt(3);
        for (int p = 0; p < count; p++) {
            parts.add("part-" + p);
            PartDraft draft = builder.part("part-" + p, MASSES[random.nextInt(MASSES.length)]);
            partDrafts.add(chance(2) ? draft.unknownMass() : draft);
        }
        joints();
        liftConditions();
        circuits();
        joints.forEach(this::freedom);
        supports();
        cracks();
        pairs();
        builder.feature("flatness", pick(parts), condition(List.of(), 2));
        StripRequest request = request();
        return new Case(seed, builder.build(), request);
    }

    private void joints() {
        int extra = Math.max(4 - parts.size(), 0) + random.nextInt(4);
        for (int p = 0; p < parts.size(); p++) {
            String to = p == 0 || chance(50) ? "stand" : parts.get(random.nextInt(p));
            joint(parts.get(p), to, chance(12));
        }
        for (int e = 0; e < extra; e++) {
            String from = pick(parts);
            String to = chance(40) ? "stand" : pick(parts);
            if (!from.equals(to)) {
                joint(from, to, chance(50));
            }
        }
    }

    private void joint(String from, String to, boolean flexible) {
        String id = "joint-" + joints.size();
        String third = pick(parts);
        boolean three = chance(18) && !third.equals(from) && !third.equals(to);
        String[] between = three ? new String[] {from, to, third} : new String[] {from, to};
        JointDraft draft = flexible
                ? builder.flexible(id, seconds(), HOLDS[random.nextInt(HOLDS.length)], between)
                : builder.rigid(id, seconds(), between);
        draft.zone(pick(ZONES));
        if (chance(60)) {
            draft.tools(pick(TOOLS));
        } else if (chance(60)) {
            int first = random.nextInt(TOOLS.size());
            draft.tools(TOOLS.get(first), TOOLS.get((first + 1) % TOOLS.size()));
        }
        if (chance(40)) {
            draft.rests();
        }
        if (chance(15)) {
            draft.destroys("washer " + random.nextInt(3), 1 + random.nextInt(2), 1.5);
        }
        if (chance(15)) {
            draft.seizure(0.25, 4L * random.nextInt(200));
        }
        if (flexible && chance(40) && readyLeft-- > 0) {
            builder.ready("strap-" + id, ReadyKind.STRAP, seconds()).zone(pick(ZONES));
            draft.strap("strap-" + id);
        }
        joints.add(draft);
    }

    private void liftConditions() {
        for (PartDraft draft : partDrafts) {
            if (chance(18)) {
                String own = parts.get(partDrafts.indexOf(draft));
                List<Condition.Alternative> alternatives = alternatives(List.of(own), 2, 80);
                if (!alternatives.isEmpty()) {
                    draft.lift(alternatives);
                }
            }
        }
        if (chance(20) && parts.size() > 1) {
            partDrafts.get(0).lift(EngineBuilder.away(parts.get(1)));
            partDrafts.get(1).lift(EngineBuilder.away(parts.get(0)));
        }
    }

    /** Alternatives of one or two literals; parts only outside those given. */
    private List<Condition.Alternative> alternatives(List<String> own, int most, int partPercent) {
        List<Condition.Alternative> alternatives = new ArrayList<>();
        int count = 1 + random.nextInt(most);
        for (int a = 0; a < count; a++) {
            List<Literal> literals = new ArrayList<>();
            int length = chance(80) ? 1 : 2;
            for (int l = 0; l < length; l++) {
                String part = outer(parts, own);
                String joint = outer(joints.stream().map(JointDraft::id).toList(), own);
                if (chance(partPercent) && !own.contains(part)) {
                    literals.add(EngineBuilder.away(part));
                } else if (!own.contains(joint)) {
                    literals.add(EngineBuilder.undone(joint));
                }
            }
            if (!literals.isEmpty()) {
                alternatives.add(new Condition.Alternative(literals));
            }
        }
        return alternatives;
    }

    /** Mostly something further out (of a higher number) than all of these, so that most engines can be taken apart. */
    private String outer(List<String> from, List<String> own) {
        int last = own.stream().mapToInt(from::indexOf).max().orElse(-1) + 1;
        return last < from.size() && chance(95) ? pick(from.subList(last, from.size())) : pick(from);
    }

    private Condition condition(List<String> own, int clauses) {
        Condition condition = Condition.ALWAYS;
        for (int c = 0; c < clauses; c++) {
            List<Condition.Alternative> alternatives = alternatives(own, 3, 60);
            condition = alternatives.isEmpty() ? condition : EngineBuilder.and(condition, alternatives);
        }
        return condition;
    }

    private void freedom(JointDraft draft) {
        List<String> own = new ArrayList<>(draft.between());
        own.add(draft.id());
        if (chance(45)) {
            condition(own, chance(80) ? 1 : 2).clauses().forEach(clause -> draft.access(clause.alternatives()));
        }
        if (chance(2) && !draft.isDrain()) {
            draft.licensed();
        }
        if (chance(6)) {
            draft.state(chance(50) ? Joint.EngineState.COLD : Joint.EngineState.WARM);
        }
        if (chance(6) && joints.size() > 1) {
            String holder = pick(joints).id();
            if (!holder.equals(draft.id())) {
                draft.hold(holder);
            }
        }
    }

    private void circuits() {
        if (!chance(45)) {
            return;
        }
        List<String> safe = new ArrayList<>();
        List<String> drains = new ArrayList<>();
        JointDraft drained = pick(joints);
        if (chance(60) && readyLeft-- > 0) {
            builder.ready("cap-off", ReadyKind.MAKE_SAFE, seconds()).zone(pick(ZONES));
            safe.add("cap-off");
        }
        if (chance(70) && readyLeft-- > 0) {
            builder.ready("drain-" + drained.id(), ReadyKind.DRAIN, seconds())
                    .joint(drained.id())
                    .zone(pick(ZONES))
                    .tools(pick(TOOLS))
                    .destroys("washer 0", 1, 1.5);
            drained.opens("coolant").drains("coolant");
            drains.add("drain-" + drained.id());
        }
        if (!drains.isEmpty() && readyLeft-- > 0) {
            ReadyDraft tap =
                    builder.ready("drain-tap", ReadyKind.DRAIN, seconds()).tools(pick(TOOLS));
            if (chance(40)) {
                tap.access(EngineBuilder.away(pick(parts)));
            }
            drains.add("drain-tap");
        }
        builder.circuit("coolant", CircuitKind.COOLANT, safe, drains, List.of("hot"));
        for (int k = 0; k < 2; k++) {
            JointDraft opener = pick(joints);
            if (opener != drained) {
                opener.opens("coolant");
            }
        }
    }

    private void supports() {
        if (chance(35) && readyLeft-- > 0) {
            ReadyDraft support = builder.ready("support", ReadyKind.SUPPORT, seconds());
            support.zone(pick(ZONES)).carries(pick(parts));
            if (chance(40)) {
                support.access(
                        chance(50)
                                ? EngineBuilder.away(pick(parts))
                                : EngineBuilder.undone(pick(joints).id()));
            }
            if (chance(25)) {
                pick(joints).needs("support");
            }
        }
        if (chance(20) && readyLeft-- > 0) {
            builder.ready("pins-in", ReadyKind.PIN, seconds()).zone(pick(ZONES));
            pick(joints).needs("pins-in");
        }
    }

    private void cracks() {
        if (chance(30) && readyLeft-- > 0) {
            JointDraft shaft = pick(joints);
            ReadyDraft crack = builder.ready("crack-" + shaft.id(), ReadyKind.CRACK_LOOSE, seconds());
            crack.joint(shaft.id())
                    .zone(pick(ZONES))
                    .tools(pick(TOOLS))
                    .hold(shaft.id(), pick(joints).id());
            if (chance(40)) {
                crack.hold(pick(joints).id());
            }
            shaft.needs("crack-" + shaft.id());
        }
    }

    private void pairs() {
        for (int k = 0; k < 2; k++) {
            String first = pick(joints).id();
            String then = pick(joints).id();
            if (chance(20) && !first.equals(then)) {
                builder.before(first, then);
            }
        }
    }

    private StripRequest request() {
        List<String> off = new ArrayList<>();
        List<String> aside = new ArrayList<>();
        List<String> open = new ArrayList<>();
        List<String> measure = new ArrayList<>();
        int kind = random.nextInt(20);
        if (kind < 11) {
            off.add(pick(parts));
        } else if (kind < 15) {
            aside.add(pick(parts));
        } else if (kind < 18) {
            open.add(pick(joints).id());
        } else {
            measure.add("flatness");
        }
        if (chance(55)) {
            off.add(pick(parts));
        }
        List<String> stuck = new ArrayList<>();
        if (chance(15)) {
            JointDraft draft = pick(joints);
            stuck.add(draft.id());
            if (chance(60)) {
                Spend spend = new Spend("bolt " + draft.id(), 2, OptionalDouble.of(4));
                draft.cut(seconds() * 2, List.of(spend), "cut-off saw");
            }
        }
        Engine engine = builder.build();
        List<LiftingWay> ways = engine.workplace().waysOfLifting();
        List<LiftingWay> own = chance(50) ? ways.subList(0, 1) : ways;
        StripRequest.Means means = new StripRequest.Means(own, chance(60) ? 0 : 20, 1_000_000);
        StripRequest.Target target =
                new StripRequest.Target(off.stream().distinct().toList(), aside, open, measure);
        return new StripRequest(target, List.of(), List.of(), stuck, means);
    }
}
