package gudgeon.core.planning;

import gudgeon.core.engine.Circuit;
import gudgeon.core.engine.Condition;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.engine.Literal;
import gudgeon.core.engine.Part;
import gudgeon.core.engine.Ready;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * An engine as arrays. Parts are numbered in file order; actions are the joints in file order, then the ready operations
 * in file order. Masses are whole milligrams, so that sums and limits compare exactly.
 */
final class Model {
    final Engine engine;
    final int parts;
    final int joints;
    final int actions;
    final int base;
    final long[] mass;
    /** Lift conditions by part: clauses, alternatives, literals; a literal is a part number or the complement of a joint's. */
    final int[][][][] lift;

    final int[][] jointParts;
    final boolean[] flexible;
    final long[] holds;
    final int[] strap;
    final boolean[] rests;
    final boolean[] licensed;
    /** By action: access conditions as in {@link #lift}. */
    final int[][][][] access;
    /** By action: the joint whose parts a part literal is judged against, or -1 for "moved". */
    final int[] judgedAt;

    final int[][] needs;
    /** By action: circuits that must be ready. */
    final int[][] opens;

    final int[][] makeSafe;
    final int[][] drains;
    /** By action: parts that a support carries. */
    final int[][] carries;

    /** Parts moved before anything is done. */
    final BitSet away = new BitSet();

    final int[][] jointsOfPart;
    final State.Frame frame;
    private final Map<String, Integer> partIndex = new HashMap<>();
    private final Map<String, Integer> actionIndex = new HashMap<>();

    Model(Engine engine) {
        this.engine = engine;
        parts = engine.parts().size();
        joints = engine.joints().size();
        actions = joints + engine.ready().size();
        for (Part part : engine.parts()) {
            partIndex.put(part.id(), partIndex.size());
        }
        engine.joints().forEach(joint -> actionIndex.put(joint.id(), actionIndex.size()));
        engine.ready().forEach(ready -> actionIndex.put(ready.id(), actionIndex.size()));
        base = part(engine.workplace().base());
        mass = engine.parts().stream()
                .mapToLong(part -> milligrams(part.massKilograms()))
                .toArray();
        lift = engine.parts().stream().map(part -> compile(part.lift())).toArray(int[][][][]::new);
        jointParts = new int[joints][];
        flexible = new boolean[joints];
        holds = new long[joints];
        strap = new int[joints];
        rests = new boolean[joints];
        licensed = new boolean[actions];
        access = new int[actions][][][];
        judgedAt = new int[actions];
        needs = new int[actions][];
        opens = new int[actions][];
        carries = new int[actions][];
        Map<String, Integer> circuits = new HashMap<>();
        engine.circuits().forEach(circuit -> circuits.put(circuit.id(), circuits.size()));
        makeSafe = engine.circuits().stream().map(Circuit::makeSafe).map(this::actions).toArray(int[][]::new);
        drains = engine.circuits().stream().map(Circuit::drains).map(this::actions).toArray(int[][]::new);
        for (int j = 0; j < joints; j++) {
            compileJoint(j, engine.joints().get(j), circuits);
        }
        for (int a = joints; a < actions; a++) {
            compileReady(a, engine.ready().get(a - joints));
        }
        jointsOfPart = invert();
        frame = State.Frame.whole(this);
    }

    private void compileJoint(int j, Joint joint, Map<String, Integer> circuits) {
        jointParts[j] = joint.between().stream().mapToInt(this::part).toArray();
        flexible[j] = joint.flexible();
        holds[j] = joint.hang().map(hang -> milligrams(hang.holdsKilograms())).orElse(0L);
        strap[j] = joint.hang().flatMap(Joint.Hang::strap).map(this::action).orElse(-1);
        Joint.Freedom freedom = joint.freedom();
        rests[j] = freedom.rests();
        licensed[j] = freedom.licensed();
        access[j] = compile(freedom.access());
        judgedAt[j] = j;
        needs[j] = actions(freedom.needs());
        opens[j] = freedom.opens().stream()
                .filter(circuit -> !freedom.drains().contains(circuit))
                .mapToInt(circuit -> known(circuits, circuit, "circuit"))
                .toArray();
        carries[j] = new int[0];
    }

    private void compileReady(int a, Ready ready) {
        access[a] = compile(ready.access());
        judgedAt[a] = ready.joint().map(this::action).orElse(-1);
        licensed[a] = ready.joint().map(id -> engine.joint(id).freedom().licensed()).orElse(false);
        needs[a] = actions(ready.needs());
        opens[a] = new int[0];
        carries[a] = ready.effect().carries().stream().mapToInt(this::part).toArray();
    }

    private int[][] invert() {
        List<List<Integer>> lists = new ArrayList<>();
        for (int p = 0; p < parts; p++) {
            lists.add(new ArrayList<>());
        }
        for (int j = 0; j < joints; j++) {
            for (int p : jointParts[j]) {
                lists.get(p).add(j);
            }
        }
        return lists.stream()
                .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }

    int[][][] compile(Condition condition) {
        return condition.clauses().stream()
                .map(clause -> clause.alternatives().stream()
                        .map(alternative -> alternative.literals().stream()
                                .mapToInt(this::literal)
                                .toArray())
                        .toArray(int[][]::new))
                .toArray(int[][][]::new);
    }

    private int literal(Literal literal) {
        return switch (literal) {
            case Literal.PartAway away -> part(away.id());
            case Literal.JointUndone undone -> ~action(undone.id());
        };
    }

    int part(String id) {
        return known(partIndex, id, "part");
    }

    int action(String id) {
        return known(actionIndex, id, "joint or ready operation");
    }

    int[] actions(List<String> ids) {
        return ids.stream().mapToInt(this::action).toArray();
    }

    String partId(int part) {
        return engine.parts().get(part).id();
    }

    String actionId(int action) {
        return action < joints
                ? engine.joints().get(action).id()
                : engine.ready().get(action - joints).id();
    }

    static long milligrams(double kilograms) {
        return kilograms > 1e9 ? Long.MAX_VALUE / 4 : Math.round(kilograms * 1e6);
    }

    static long heaviest(List<LiftingWay> ways) {
        return ways.stream().mapToLong(way -> milligrams(way.limitKilograms())).max().orElse(0);
    }

    private static int known(Map<String, Integer> index, String id, String what) {
        Integer number = index.get(id);
        if (number == null) {
            throw new IllegalArgumentException("no " + what + " is called " + id);
        }
        return number;
    }
}
