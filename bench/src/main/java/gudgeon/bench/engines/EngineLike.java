package gudgeon.bench.engines;

import gudgeon.core.engine.Circuit;
import gudgeon.core.engine.CircuitKind;
import gudgeon.core.engine.Condition;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.JointKind;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.engine.Literal;
import gudgeon.core.engine.Makeup;
import gudgeon.core.engine.Part;
import gudgeon.core.engine.Precedence;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.ReadyKind;
import gudgeon.core.engine.UndoTime;
import gudgeon.core.engine.Zone;
import gudgeon.core.quantity.Mass;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Engines as they might be, of any number of joints, drawn from a seed. On each side of a block stand stacks: a part on the
 * block, the next one on it or on the block and in front of it, and so on to the outside. A part is held by one to four
 * joints of one side's tools; some of its joints can be reached only with the part in front away, some also from
 * beside. Hoses and looms run between stacks and hold little; they open circuits, which are drained or made safe first, and
 * stand in the way of the main joint of a part that they would not hold. Every eighth joint leaves its parts resting. Some
 * joints need crack-loose operations, some are likely to be seized, a few parts need a helper or a hoist. Times and masses
 * are typical.
 */
public final class EngineLike {
    private static final List<Zone> ZONES = List.of(
            new Zone("top", "Over the engine", 0, 0, List.of()),
            new Zone("front", "In front of it", 20, 20, List.of()),
            new Zone("left", "Left side", 25, 25, List.of()),
            new Zone("right", "Right side", 25, 25, List.of()),
            new Zone("rear", "Behind it", 40, 40, List.of()),
            new Zone("under", "Lying under it", 90, 90, List.of()),
            new Zone(Zone.BENCH, "Bench", 30, 30, List.of()));
    private static final int SIDES = ZONES.size() - 1;
    private static final List<String> TOOLS = List.of(
            "socket 8 mm",
            "socket 10 mm",
            "socket 13 mm",
            "socket 15 mm",
            "socket 17 mm",
            "hexagon key 5 mm",
            "hexagon key 6 mm",
            "lobe key 40",
            "hose clip pliers",
            "screwdriver",
            "spanner 19 mm");

    private final Random random;
    private final int wanted;
    private final boolean careless;
    private final List<Part> parts = new ArrayList<>();
    private final List<Draft> joints = new ArrayList<>();
    private final List<Ready> ready = new ArrayList<>();
    private final List<String> innermost = new ArrayList<>();
    private final List<String> deepest = new ArrayList<>();
    /** By part: the joint that is always behind the part in front. */
    private final Map<String, Draft> mains = new HashMap<>();
    /** By part: its side. */
    private final List<Integer> sides = new ArrayList<>();

    /**
     * A drawn engine.
     *
     * @param innermost the parts that stand on the block, under all others
     * @param deepest the innermost part of the highest stack of each side, that of the highest one first
     */
    public record Drawn(Engine engine, List<String> innermost, List<String> deepest) {
        public Drawn {
            innermost = List.copyOf(innermost);
            deepest = List.copyOf(deepest);
        }

        /**
         * A target by its word.
         *
         * @throws IllegalArgumentException when the word is none of deep, sides, bare
         */
        public List<String> target(String word) {
            return switch (word) {
                case "deep" -> deepest.subList(0, 1);
                case "sides" -> deepest;
                case "bare" -> innermost;
                default -> throw new IllegalArgumentException("a target is deep, sides or bare, not " + word);
            };
        }
    }

    private EngineLike(int wanted, long seed, boolean careless) {
        this.wanted = wanted;
        this.careless = careless;
        random = new Random(seed * 0x9E3779B97F4A7C15L + wanted);
    }

    /**
     * Draws an engine.
     *
     * @param joints how many joints it shall have, at least 20
     */
    public static Drawn draw(int joints, long seed) {
        return draw(joints, seed, false);
    }

    /**
     * Draws an engine.
     *
     * @param careless whether the file says nothing about hoses that do not hold what they hang on, so that the order alone
     *     must see to it that nothing dangles
     */
    public static Drawn draw(int joints, long seed, boolean careless) {
        if (joints < 20) {
            throw new IllegalArgumentException("an engine has at least 20 joints, not " + joints);
        }
        return new EngineLike(joints, seed, careless).draw();
    }

    private Drawn draw() {
        part("block", 60, Condition.ALWAYS, 0);
        circuits();
        int stack = 0;
        int[] highest = new int[SIDES];
        String[] deep = new String[SIDES];
        Arrays.fill(deep, "");
        while (joints.size() < wanted * 85 / 100) {
            int side = stack % SIDES;
            int height = 1 + random.nextInt(2 + (int) Math.round(Math.log(wanted)));
            String base = stack(stack++, side, height);
            innermost.add(base);
            if (height > highest[side]) {
                highest[side] = height;
                deep[side] = base;
            }
        }
        while (joints.size() < wanted) {
            hose();
        }
        IntStream.range(0, SIDES)
                .filter(side -> !deep[side].isEmpty())
                .boxed()
                .sorted((a, b) -> Integer.compare(highest[b], highest[a]))
                .forEach(side -> deepest.add(deep[side]));
        return new Drawn(engine(), innermost, deepest);
    }

    private void circuits() {
        operation("battery", ReadyKind.MAKE_SAFE, 120, "top", "socket 10 mm", Optional.empty());
        operation("fuel-off", ReadyKind.MAKE_SAFE, 180, "rear", "spanner 19 mm", Optional.empty());
        for (String plug : List.of("coolant-plug", "oil-plug")) {
            String circuit = plug.substring(0, plug.indexOf('-'));
            joint(new Draft(plug, List.of("block", "sump-boss"), 120, "under", "socket 17 mm").drains(circuit));
            operation("drain-" + plug, ReadyKind.DRAIN, 600, "under", "socket 17 mm", Optional.of(plug));
        }
        part("sump-boss", 0.5, Condition.ALWAYS, 5);
        joint(new Draft("boss-weld", List.of("block", "sump-boss"), 600, "under", "socket 17 mm"));
    }

    /** Builds a stack from the block outwards; returns its innermost part. */
    private String stack(int number, int side, int height) {
        List<String> ids = new ArrayList<>();
        for (int h = 0; h < height; h++) {
            ids.add("part-" + number + "-" + h);
        }
        for (int h = 0; h < height; h++) {
            String before = h + 1 < height ? ids.get(h + 1) : "";
            Condition lift = before.isEmpty() ? Condition.ALWAYS : away(before);
            part(ids.get(h), mass(), lift, side);
            int count = 1 + random.nextInt(4);
            for (int j = 0; j < count && joints.size() < wanted; j++) {
                String to = h == 0 || random.nextInt(3) == 0 ? "block" : ids.get(h - 1);
                bolt(ids.get(h) + "-" + j, ids.get(h), to, side, before);
            }
        }
        return ids.getFirst();
    }

    private void bolt(String id, String part, String to, int side, String before) {
        int reachedFrom = random.nextInt(8) == 0 ? random.nextInt(SIDES) : side;
        String tool = TOOLS.get((side * 3 + (random.nextInt(4) == 0 ? random.nextInt(TOOLS.size()) : random.nextInt(3)))
                % TOOLS.size());
        Draft draft = new Draft(id, List.of(part, to), 30 + 15L * random.nextInt(16), ZONES.get(reachedFrom).id(), tool);
        boolean main = id.endsWith("-0");
        if (main) {
            mains.put(part, draft);
        }
        if (!before.isEmpty() && (main || random.nextInt(10) < 7)) {
            draft.access = !main && random.nextInt(5) == 0 ? beside(before) : away(before);
        }
        draft.rests = random.nextInt(8) == 0;
        if (random.nextInt(12) == 0) {
            draft.seizure(0.1 + 0.1 * random.nextInt(3), 1800);
        }
        if (random.nextInt(15) == 0) {
            String crack = "crack-" + id;
            ready.add(ready(crack, ReadyKind.CRACK_LOOSE, 60, draft.zone, tool, Optional.of(id)));
            draft.needs.add(crack);
        }
        joint(draft);
    }

    private static Condition away(String part) {
        return new Condition(List.of(
                new Condition.Clause(List.of(new Condition.Alternative(List.of(new Literal.PartAway(part)))))));
    }

    /** The part in front away, or some part that stands elsewhere. */
    private Condition beside(String before) {
        String other = parts.get(random.nextInt(parts.size())).id();
        List<Condition.Alternative> ways = new ArrayList<>();
        ways.add(new Condition.Alternative(List.of(new Literal.PartAway(before))));
        if (other.startsWith("part-") && !other.equals(before)) {
            String stack = other.substring(0, other.lastIndexOf('-'));
            if (!before.startsWith(stack + "-")) {
                ways.add(new Condition.Alternative(List.of(new Literal.PartAway(other))));
            }
        }
        return new Condition(List.of(new Condition.Clause(ways)));
    }

    private void hose() {
        int from = 3 + random.nextInt(parts.size() - 3);
        int to = random.nextInt(6) == 0 ? 0 : 3 + random.nextInt(parts.size() - 3);
        if (from == to) {
            return;
        }
        int side = sides.get(from);
        Draft draft = new Draft(
                "hose-" + joints.size(),
                List.of(parts.get(from).id(), parts.get(to).id()),
                60 + 30L * random.nextInt(5),
                ZONES.get(side).id(),
                TOOLS.get(8 + random.nextInt(2)));
        draft.hang = Optional.of(new Joint.Hang(random.nextInt(4) == 0 ? 0 : 3, Optional.empty()));
        if (!careless) {
            List.of(from, to).forEach(end -> hoseFirst(parts.get(end), draft));
        }
        draft.opens.add(List.of("coolant", "oil", "fuel", "electric").get(random.nextInt(4)));
        joint(draft);
    }

    /** A hose that would not hold a part is in the way of its main joint, so that the part never dangles from it. */
    private void hoseFirst(Part part, Draft hose) {
        double holds = hose.hang.map(Joint.Hang::holdsKilograms).orElse(0.0);
        Draft main = mains.get(part.id());
        if (main != null && part.massKilograms() > holds) {
            List<Condition.Clause> clauses = new ArrayList<>(main.access.clauses());
            clauses.add(new Condition.Clause(
                    List.of(new Condition.Alternative(List.of(new Literal.JointUndone(hose.id))))));
            main.access = new Condition(clauses);
        }
    }

    private double mass() {
        int draw = random.nextInt(30);
        return draw == 0 ? 60 : draw < 3 ? 32 : 0.2 + random.nextInt(80) / 10.0;
    }

    private void part(String id, double kilograms, Condition lift, int side) {
        parts.add(new Part(id, id, "", Optional.of(Mass.ofKilograms(kilograms)), lift, Part.Care.NONE));
        sides.add(side);
    }

    private void joint(Draft draft) {
        joints.add(draft);
    }

    private void operation(
            String id, ReadyKind kind, long seconds, String zone, String tool, Optional<String> joint) {
        ready.add(ready(id, kind, seconds, zone, tool, joint));
    }

    private static Ready ready(
            String id, ReadyKind kind, long seconds, String zone, String tool, Optional<String> joint) {
        return new Ready(
                id,
                id,
                kind,
                seconds,
                zone,
                List.of(tool),
                Condition.ALWAYS,
                List.of(),
                joint,
                new Ready.Effect(
                        OptionalDouble.empty(),
                        List.of(),
                        Joint.Hold.NONE,
                        Joint.EngineState.ANY,
                        "",
                        List.of(),
                        List.of(),
                        ""));
    }

    private Engine engine() {
        List<Circuit> circuits = List.of(
                circuit("coolant", CircuitKind.COOLANT, List.of(), List.of("drain-coolant-plug")),
                circuit("oil", CircuitKind.OIL, List.of(), List.of("drain-oil-plug")),
                circuit("fuel", CircuitKind.FUEL, List.of("fuel-off"), List.of()),
                circuit("electric", CircuitKind.ELECTRIC, List.of("battery"), List.of()));
        return new Engine(
                new Engine.Identity("drawn", "Drawn engine", 1, "", 4, Map.of()),
                new Engine.Workplace(
                        "block",
                        "top",
                        20,
                        ZONES,
                        List.of(
                                new LiftingWay("alone", 25, 60, ""),
                                new LiftingWay("helper", 50, 120, ""),
                                new LiftingWay("hoist", 500, 1200, ""))),
                parts,
                joints.stream().map(Draft::build).toList(),
                circuits,
                ready,
                List.of(),
                new Engine.BuildRules(List.<Precedence>of(), List.of()));
    }

    private static Circuit circuit(String id, CircuitKind kind, List<String> safe, List<String> drains) {
        return new Circuit(id, id, kind, "", Optional.empty(), safe, drains, List.of(), "");
    }

    /** A joint being drawn. */
    private static final class Draft {
        private final String id;
        private final List<String> between;
        private final String zone;
        private final String tool;
        private UndoTime undo;
        private Optional<Joint.Hang> hang = Optional.empty();
        private Condition access = Condition.ALWAYS;
        private boolean rests;
        private final List<String> needs = new ArrayList<>();
        private final List<String> opens = new ArrayList<>();
        private final List<String> drains = new ArrayList<>();

        Draft(String id, List<String> between, long seconds, String zone, String tool) {
            this.id = id;
            this.between = between;
            this.zone = zone;
            this.tool = tool;
            undo = new UndoTime(seconds, 0, 0, "");
        }

        Draft drains(String circuit) {
            drains.add(circuit);
            return this;
        }

        void seizure(double chance, long seconds) {
            undo = new UndoTime(undo.fastenerSeconds(), chance, seconds, "");
        }

        Joint build() {
            return new Joint(
                    id,
                    id,
                    hang.isPresent() ? JointKind.HOSE_CLIP : JointKind.BOLTED,
                    between,
                    hang,
                    new Joint.Freedom(
                            access,
                            Condition.ALWAYS,
                            needs,
                            opens,
                            drains,
                            false,
                            Joint.EngineState.ANY,
                            Joint.Hold.NONE,
                            rests),
                    new Joint.Work(zone, List.of(tool), undo, 0, Optional.empty(), List.of(), "", false),
                    Makeup.PLAIN);
        }
    }
}
