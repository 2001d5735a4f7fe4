package gudgeon.core.planning;

import gudgeon.core.engine.Condition;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.engine.Literal;
import gudgeon.core.engine.Part;
import gudgeon.core.engine.Precedence;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.Spend;
import gudgeon.core.engine.Zone;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The definitions of docs/planning.md over bit sets, for engines small enough to try everything. Operations are numbered
 * joints first, then ready operations; a set of operations or of parts is a {@code long}. Written from that page and not
 * from the planner. At most 63 operations and 63 parts.
 */
final class BruteModel {
    final Engine engine;
    final StripRequest request;
    final int parts;
    final int ops;
    private final int joints;
    private final List<BruteOp> op = new ArrayList<>();
    private final Map<String, Integer> opIndex = new HashMap<>();
    private final Map<String, Integer> partIndex = new HashMap<>();
    private final double[] mass;
    private final long[][][][] lift;
    private final List<long[]> circuits = new ArrayList<>();
    private final double limit;
    private final long base;
    private final Map<Long, long[]> pieces = new HashMap<>();
    private final Map<String, Long> travel = new HashMap<>();

    BruteModel(Engine engine, StripRequest request) {
        this.engine = engine;
        this.request = request;
        parts = engine.parts().size();
        joints = engine.joints().size();
        ops = joints + engine.ready().size();
        engine.parts().forEach(part -> partIndex.put(part.id(), partIndex.size()));
        engine.joints().forEach(joint -> opIndex.put(joint.id(), opIndex.size()));
        engine.ready().forEach(operation -> opIndex.put(operation.id(), opIndex.size()));
        engine.circuits().forEach(c -> circuits.add(new long[] {opsOf(c.makeSafe()), opsOf(c.drains())}));
        engine.joints().forEach(this::add);
        engine.ready().forEach(this::add);
        for (Precedence pair : engine.rules().precedences()) {
            op.get(index(pair.then())).first |= 1L << index(pair.first());
        }
        mass = engine.parts().stream().mapToDouble(Part::massKilograms).toArray();
        lift = new long[parts][][][];
        for (int p = 0; p < parts; p++) {
            lift[p] = compile(engine.parts().get(p).lift());
        }
        limit = request.means().ways().stream()
                .mapToDouble(LiftingWay::limitKilograms)
                .max()
                .orElse(0);
        base = partsOf(List.of(engine.workplace().base()));
    }

    private void add(Joint joint) {
        BruteOp o = new BruteOp();
        o.id = joint.id();
        o.joint = true;
        o.between = partsOf(joint.between());
        o.flexible = joint.flexible();
        joint.hang().ifPresent(hang -> {
            o.holds = hang.holdsKilograms();
            o.strap = opsOf(hang.strap().stream().toList());
        });
        o.licensed = joint.freedom().licensed();
        o.rests = joint.freedom().rests();
        o.needs = opsOf(joint.freedom().needs());
        o.access = compile(joint.freedom().access());
        o.hold = holds(joint.freedom().hold());
        o.opens = joint.freedom().opens().stream()
                .filter(id -> !joint.freedom().drains().contains(id))
                .map(id -> engine.circuits().indexOf(engine.circuit(id)))
                .toList();
        o.zone = joint.work().zone();
        o.tools = joint.work().tools();
        o.cost = joint.work().undo().expectedSeconds() + money(joint.makeup().spends());
        if (request.willNotCome().contains(joint.id())) {
            o.available = joint.work().cut().isPresent();
            joint.work().cut().ifPresent(cut -> {
                List<Spend> spends = new ArrayList<>(joint.makeup().spends());
                spends.addAll(cut.destroys());
                o.cost = cut.seconds() + money(spends);
                o.tools = cut.tools();
            });
        }
        op.add(o);
    }

    private void add(Ready ready) {
        BruteOp o = new BruteOp();
        o.id = ready.id();
        ready.joint().ifPresent(id -> o.between = partsOf(engine.joint(id).between()));
        o.needs = opsOf(ready.needs());
        o.access = compile(ready.access());
        o.hold = holds(ready.effect().hold());
        o.zone = ready.zone();
        o.tools = ready.tools();
        o.cost = ready.seconds() + money(ready.effect().spends());
        o.carries = partsOf(ready.effect().carries());
        op.add(o);
    }

    private long money(List<Spend> spends) {
        double value = 0;
        for (Spend spend : spends) {
            value += spend.count() * spend.priceEach().orElse(0);
        }
        double worth = request.means().worthPerHour();
        return worth == 0 ? 0 : Math.round(value * 3600 / worth);
    }

    private long[][] holds(Joint.Hold hold) {
        return hold.alternatives().stream().map(ids -> new long[] {opsOf(ids)}).toArray(long[][]::new);
    }

    /** Clauses, their alternatives, and of each the parts and the joints. */
    private long[][][] compile(Condition condition) {
        List<long[][]> clauses = new ArrayList<>();
        for (Condition.Clause clause : condition.clauses()) {
            List<long[]> alternatives = new ArrayList<>();
            for (Condition.Alternative alternative : clause.alternatives()) {
                long[] masks = new long[2];
                for (Literal literal : alternative.literals()) {
                    switch (literal) {
                        case Literal.PartAway part -> masks[0] |= partsOf(List.of(part.id()));
                        case Literal.JointUndone joint -> masks[1] |= opsOf(List.of(joint.id()));
                    }
                }
                alternatives.add(masks);
            }
            clauses.add(alternatives.toArray(long[][]::new));
        }
        return clauses.toArray(long[][][]::new);
    }

    private int index(String id) {
        Integer index = opIndex.get(id);
        if (index == null) {
            throw new IllegalArgumentException("no operation " + id);
        }
        return index;
    }

    long opsOf(List<String> ids) {
        long set = 0;
        for (String id : ids) {
            set |= 1L << index(id);
        }
        return set;
    }

    long partsOf(List<String> ids) {
        long set = 0;
        for (String id : ids) {
            Integer index = partIndex.get(id);
            if (index == null) {
                throw new IllegalArgumentException("no part " + id);
            }
            set |= 1L << index;
        }
        return set;
    }

    List<String> partIds(long set) {
        return engine.parts().stream()
                .map(Part::id)
                .filter(id -> (set & partsOf(List.of(id))) != 0)
                .toList();
    }

    String id(int o) {
        return op.get(o).id;
    }

    long cost(int o) {
        return op.get(o).cost;
    }

    List<String> tools(int o) {
        return op.get(o).tools;
    }

    long start() {
        return opsOf(request.undone()) | opsOf(request.done());
    }

    /** Components of parts, as the set that each part is in. */
    private long[] components(long done, boolean rigidOnly) {
        long[] in = new long[parts];
        for (int p = 0; p < parts; p++) {
            in[p] = 1L << p;
        }
        for (int j = 0; j < joints; j++) {
            BruteOp o = op.get(j);
            if ((done >> j & 1) == 0 && !(rigidOnly && o.flexible)) {
                long union = BruteSets.union(in, o.between);
                for (int p = 0; p < parts; p++) {
                    if ((union >> p & 1) != 0) {
                        in[p] = union;
                    }
                }
            }
        }
        return in;
    }

    /** For each part the piece it is in. */
    long[] pieceOf(long done) {
        return pieces.computeIfAbsent(done & ((1L << joints) - 1), d -> components(d, true));
    }

    long off(long done) {
        long linked = BruteSets.union(components(done, false), base);
        return ~linked & ((1L << parts) - 1);
    }

    /** Pieces that are neither the base piece nor moved. */
    List<Long> unmovedPieces(long done, long moved) {
        long[] in = pieceOf(done);
        List<Long> list = new ArrayList<>();
        for (int p = 0; p < parts; p++) {
            boolean first = Long.numberOfTrailingZeros(in[p]) == p;
            if (first && (in[p] & (base | moved)) == 0) {
                list.add(in[p]);
            }
        }
        return list;
    }

    /** Whether this union of unmoved pieces can be moved together. */
    boolean canMove(long set, long done, long moved) {
        double total = mass(set);
        if (total > limit) {
            return false;
        }
        for (int p = 0; p < parts; p++) {
            if ((set >> p & 1) != 0 && !BruteSets.holds(lift[p], set | moved, done)) {
                return false;
            }
        }
        for (int j = 0; j < joints; j++) {
            BruteOp o = op.get(j);
            boolean intact = (done >> j & 1) == 0;
            if (intact && o.flexible && (o.between & set) != 0 && (o.between & ~(set | moved)) != 0) {
                boolean strapped = (done & o.strap) != 0;
                if (o.holds < total && !strapped) {
                    return false;
                }
            }
        }
        return true;
    }

    double mass(long set) {
        double total = 0;
        for (int p = 0; p < parts; p++) {
            total += (set >> p & 1) != 0 ? mass[p] : 0;
        }
        return total;
    }

    /** Every set that can be moved now, by trying all unions of pieces; only single pieces when asked. */
    List<Long> lifts(long done, long moved, boolean singlePieces) {
        List<Long> pieces = unmovedPieces(done, moved);
        List<Long> lifts = new ArrayList<>();
        for (int subset = 1; subset < 1 << pieces.size(); subset++) {
            if (!singlePieces || Integer.bitCount(subset) == 1) {
                long set = 0;
                for (int i = 0; i < pieces.size(); i++) {
                    set |= (subset >> i & 1) != 0 ? pieces.get(i) : 0;
                }
                if (canMove(set, done, moved)) {
                    lifts.add(set);
                }
            }
        }
        return lifts;
    }

    /** The least closed set of moved parts over what is done that contains these. */
    long closure(long done, long moved, boolean singlePieces) {
        long closed = moved;
        List<Long> lifts = lifts(done, closed, singlePieces);
        while (!lifts.isEmpty()) {
            for (long set : lifts) {
                closed |= set;
            }
            lifts = lifts(done, closed, singlePieces);
        }
        return closed;
    }

    /** Parts out of the way of something between these parts; between nothing: the moved parts. */
    private long away(long between, long done, long moved) {
        boolean allMoved = (between & ~moved) == 0;
        long reachable = between == 0 || !allMoved ? moved : (1L << parts) - 1;
        return reachable & ~BruteSets.union(pieceOf(done), between);
    }

    private boolean circuitReady(int circuit, long done) {
        long[] masks = circuits.get(circuit);
        return (masks[0] & ~done) == 0 && (masks[1] == 0 || (masks[1] & done) != 0);
    }

    boolean available(int o) {
        return op.get(o).available && !op.get(o).licensed;
    }

    /** Free in the sense of the page; not asked: whether it was done already. */
    boolean free(int o, long done, long moved) {
        BruteOp x = op.get(o);
        if (!available(o) || (x.needs & ~done) != 0 || !BruteSets.holds(x.access, away(x.between, done, moved), done)) {
            return false;
        }
        for (int circuit : x.opens) {
            if (!circuitReady(circuit, done)) {
                return false;
            }
        }
        return true;
    }

    /** Whether the constraints of order that are not monotone allow the operation now, in a plan of exactly these. */
    boolean inOrder(int o, long done, long planned) {
        BruteOp x = op.get(o);
        boolean held = x.hold.length == 0;
        for (long[] alternative : x.hold) {
            held |= (alternative[0] & done) == 0;
        }
        return held && (x.first & planned & ~done) == 0;
    }

    long settled(long done) {
        long[] in = pieceOf(done);
        long settled = BruteSets.union(in, base);
        for (int o = joints; o < ops; o++) {
            settled |= (done >> o & 1) != 0 ? BruteSets.union(in, op.get(o).carries) : 0;
        }
        long before = -1;
        while (before != settled) {
            before = settled;
            for (int j = 0; j < joints; j++) {
                BruteOp o = op.get(j);
                if ((done >> j & 1) != 0 && o.rests && (o.between & settled) != 0) {
                    settled |= BruteSets.union(in, o.between);
                }
            }
        }
        return settled;
    }

    long loose(long done, long moved) {
        return ~(settled(done) | moved) & ((1L << parts) - 1);
    }

    boolean reached(long done, long moved) {
        StripRequest.Target target = request.target();
        long off = partsOf(target.off());
        boolean parted = (off & ~(off(done) & moved)) == 0 && (partsOf(target.aside()) & ~moved) == 0;
        boolean open = (opsOf(target.open()) & ~done) == 0;
        return parted
                && open
                && target.measure().stream().allMatch(id -> {
                    var feature = engine.findFeature(id).orElseThrow();
                    long access = away(partsOf(feature.parts()), done, moved);
                    return BruteSets.holds(compile(feature.access()), access, done);
                });
    }

    String zone(int o, long moved) {
        BruteOp x = op.get(o);
        return x.between != 0 && (x.between & ~moved) == 0 ? Zone.BENCH : x.zone;
    }

    long travel(String from, String to) {
        return travel.computeIfAbsent(from + ">" + to, key -> Travel.between(engine, from, to));
    }

    long toolChanges(List<String> hand, List<String> tools) {
        long taken =
                tools.stream().distinct().filter(tool -> !hand.contains(tool)).count();
        return taken * engine.workplace().toolChangeSeconds();
    }
}
