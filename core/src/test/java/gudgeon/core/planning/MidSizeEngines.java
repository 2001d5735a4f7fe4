package gudgeon.core.planning;

import gudgeon.core.engine.CircuitKind;
import gudgeon.core.engine.Condition;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Literal;
import gudgeon.core.engine.ReadyKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Engines of 20 to 40 joints whose lifts are so simple that question 1 can be written down for a general solver: every
 * <em>unit</em> is one part or two parts joined for good (by a licensed joint) and weighs 13 to 25 kg, the limit is 25 kg, so
 * that only one whole unit can be lifted at a time; every rigid joint {@code rests}, so that nothing is ever loose.
 */
final class MidSizeEngines {
    private final Random random;
    private final EngineBuilder builder = new EngineBuilder("stand");
    private final List<String> mains = new ArrayList<>();
    private final List<JointDraft> joints = new ArrayList<>();
    private final List<PartDraft> parts = new ArrayList<>();
    private final List<String> readyIds = new ArrayList<>();
    private final long seed;

    private MidSizeEngines(long seed) {
        this.seed = seed;
        this.random = new Random(seed * 0x9E3779B97F4A7C15L + 7);
    }

    static RandomEngines.Case midSize(long seed) {
        MidSizeEngines draw = new MidSizeEngines(seed);
        return draw.draw(20 + draw.random.nextInt(21));
    }

    /** The same kind of engine with few enough joints to try everything. */
    static RandomEngines.Case tiny(long seed) {
        MidSizeEngines draw = new MidSizeEngines(seed);
        return draw.draw(5 + draw.random.nextInt(3));
    }

    private boolean chance(int percent) {
        return random.nextInt(100) < percent;
    }

    private <T> T pick(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    private long seconds() {
        return 10L * (1 + random.nextInt(40)) + random.nextInt(7);
    }

    private RandomEngines.Case draw(int count) {
        int units = Math.max(3, count / 2);
        for (int u = 0; u < units; u++) {
            unit(u);
        }
        for (int u = 0; u < units; u++) {
            joint(mains.get(u), u == 0 || chance(40) ? "stand" : mains.get(random.nextInt(u)), false);
        }
        while (joints.size() < count) {
            String from = pick(mains);
            String to = chance(35) ? "stand" : pick(mains);
            if (!from.equals(to)) {
                joint(from, to, chance(40));
            }
        }
        for (int r = 0; r < Math.max(1, count / 8); r++) {
            builder.ready("ready-" + r, ReadyKind.PIN, seconds());
            readyIds.add("ready-" + r);
        }
        builder.ready("cap-off", ReadyKind.MAKE_SAFE, seconds());
        builder.ready("tap", ReadyKind.DRAIN, seconds()).access(EngineBuilder.away(pick(mains)));
        builder.ready("siphon", ReadyKind.DRAIN, seconds() * 2).needs(pick(readyIds));
        builder.circuit("coolant", CircuitKind.COOLANT, List.of("cap-off"), List.of("tap", "siphon"));
        joints.forEach(this::freedom);
        for (int p = 0; p < parts.size(); p++) {
            if (chance(20)) {
                parts.get(p).lift(alternatives(List.of(mains.get(p)), p, p));
            }
        }
        Engine engine = builder.build();
        StripRequest.Target target = new StripRequest.Target(
                List.of(mains.get(random.nextInt(Math.max(1, units / 3)))),
                chance(50) ? List.of(pick(mains)) : List.of(),
                List.of(),
                List.of());
        StripRequest.Means means = new StripRequest.Means(engine.workplace().waysOfLifting(), 0, 1);
        return new RandomEngines.Case(seed, engine, new StripRequest(target, List.of(), List.of(), List.of(), means));
    }

    private void unit(int u) {
        String main = "part-" + u;
        mains.add(main);
        boolean pair = chance(25);
        parts.add(builder.part(main, pair ? 7 : 13 + random.nextInt(12)));
        if (pair) {
            builder.part("mate-" + u, 7);
            builder.rigid("for-good-" + u, 10, main, "mate-" + u).licensed();
        }
    }

    private void joint(String from, String to, boolean flexible) {
        String id = "joint-" + joints.size();
        String third = pick(mains);
        boolean three = chance(10) && !third.equals(from) && !third.equals(to);
        String[] between = three ? new String[] {from, to, third} : new String[] {from, to};
        if (flexible) {
            JointDraft hose = builder.flexible(id, seconds(), chance(50) ? 25 : 3, between);
            if (chance(40)) {
                builder.ready("strap-" + id, ReadyKind.STRAP, seconds());
                hose.strap("strap-" + id);
            }
            joints.add(hose);
        } else {
            joints.add(builder.rigid(id, seconds(), between).rests());
        }
    }

    private void freedom(JointDraft draft) {
        int number = joints.indexOf(draft);
        int part = draft.between().stream().mapToInt(mains::indexOf).max().orElse(0);
        while (chance(45)) {
            draft.access(alternatives(draft.between(), part, number));
        }
        if (chance(12)) {
            draft.needs(pick(readyIds));
        }
        if (chance(12)) {
            draft.opens("coolant");
        }
    }

    /** One to three alternatives of one or two literals, mostly further out than this part and this joint. */
    private List<Condition.Alternative> alternatives(List<String> own, int part, int joint) {
        List<Condition.Alternative> alternatives = new ArrayList<>();
        for (int a = 0; a < 1 + random.nextInt(3); a++) {
            List<Literal> literals = new ArrayList<>();
            for (int l = 0; l < (chance(70) ? 1 : 2); l++) {
                String other = mains.get(outer(part, mains.size()));
                boolean away = chance(65) && !own.contains(other);
                literals.add(
                        away
                                ? EngineBuilder.away(other)
                                : EngineBuilder.undone(
                                        joints.get(outer(joint, joints.size())).id()));
            }
            alternatives.add(new Condition.Alternative(literals));
        }
        return alternatives;
    }

    private int outer(int than, int size) {
        return than + 1 < size && chance(85) ? than + 1 + random.nextInt(size - than - 1) : random.nextInt(size);
    }
}
