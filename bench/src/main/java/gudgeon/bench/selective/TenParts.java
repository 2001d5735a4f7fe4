package gudgeon.bench.selective;

import gudgeon.core.engine.Condition;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.JointKind;
import gudgeon.core.engine.LiftingWay;
import gudgeon.core.engine.Literal;
import gudgeon.core.engine.Makeup;
import gudgeon.core.engine.Part;
import gudgeon.core.engine.UndoTime;
import gudgeon.core.engine.Zone;
import gudgeon.core.planning.Blocked;
import gudgeon.core.planning.StripPlan;
import gudgeon.core.planning.StripPlanner;
import gudgeon.core.planning.StripRequest;
import gudgeon.core.quantity.Mass;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A product of parts with removal times and AND/OR precedences, read from a page of notes: "1:14 2:10 ..." are part and
 * seconds, "4 needs 8" and "Parts 1, 8 need 2 OR 3" the precedences. As an engine: every part is held to a stand by one
 * joint that takes its time, reached when others are undone.
 */
final class TenParts {
    private static final Pattern TIME = Pattern.compile("\\b(\\d+):(\\d+)\\b");
    private static final Pattern RULE =
            Pattern.compile("(?:Parts )?((?:\\d+, )*\\d+) needs? \\**(\\d+(?: OR \\d+)*)\\**");

    private final Map<Integer, Long> seconds = new TreeMap<>();
    private final Map<Integer, List<Integer>> anyOf = new TreeMap<>();

    static TenParts read(Path page) throws IOException {
        TenParts product = new TenParts();
        String text = Files.readString(page);
        for (String line : text.lines().filter(l -> l.startsWith("Removal times")).toList()) {
            Matcher time = TIME.matcher(line);
            while (time.find()) {
                product.seconds.put(Integer.valueOf(time.group(1)), Long.valueOf(time.group(2)));
            }
        }
        for (String line : text.lines().filter(l -> l.startsWith("Precedence")).toList()) {
            Matcher rule = RULE.matcher(line);
            while (rule.find()) {
                List<Integer> needs = new ArrayList<>();
                for (String part : rule.group(2).split(" OR ")) {
                    needs.add(Integer.valueOf(part));
                }
                for (String part : rule.group(1).split(", ")) {
                    product.anyOf.put(Integer.valueOf(part), needs);
                }
            }
        }
        if (product.seconds.isEmpty() || product.anyOf.isEmpty()) {
            throw new IllegalArgumentException(page + " states no removal times or no precedences that can be read");
        }
        return product;
    }

    List<Integer> parts() {
        return List.copyOf(seconds.keySet());
    }

    /** The cheapest set that takes some parts off, by the planner. */
    StripPlan off(List<Integer> parts) {
        StripRequest request = new StripRequest(
                StripRequest.Target.off(parts.stream().map(p -> "p" + p).toArray(String[]::new)),
                List.of(),
                List.of(),
                List.of(),
                new StripRequest.Means(List.of(new LiftingWay("alone", 25, 0, "")), 0, 100_000));
        return switch (StripPlanner.plan(engine(), request)) {
            case StripPlan plan -> plan;
            case Blocked blocked -> throw new IllegalStateException("no plan: " + blocked);
        };
    }

    private Engine engine() {
        List<Part> parts = new ArrayList<>(List.of(part("stand", 100)));
        List<Joint> joints = new ArrayList<>();
        seconds.forEach((part, time) -> {
            parts.add(part("p" + part, 1));
            joints.add(joint(part, time));
        });
        return new Engine(
                new Engine.Identity("published", "Published example", 1, "", 1, Map.of()),
                new Engine.Workplace(
                        "stand",
                        "top",
                        0,
                        List.of(new Zone("top", "Top", 0, 0, List.of()), new Zone(Zone.BENCH, "Bench", 0, 0, List.of())),
                        List.of(new LiftingWay("alone", 25, 0, ""))),
                parts,
                joints,
                List.of(),
                List.of(),
                List.of(),
                new Engine.BuildRules(List.of(), List.of()));
    }

    private static Part part(String id, double kilograms) {
        return new Part(
                id, id, "", Optional.of(Mass.ofKilograms(kilograms)), Condition.ALWAYS, Part.Care.NONE);
    }

    private Joint joint(int part, long time) {
        List<Condition.Alternative> ways = anyOf.getOrDefault(part, List.of()).stream()
                .map(other -> new Condition.Alternative(List.of(new Literal.JointUndone("j" + other))))
                .toList();
        Condition access =
                ways.isEmpty() ? Condition.ALWAYS : new Condition(List.of(new Condition.Clause(ways)));
        return new Joint(
                "j" + part,
                "j" + part,
                JointKind.BOLTED,
                List.of("stand", "p" + part),
                Optional.empty(),
                new Joint.Freedom(
                        access,
                        Condition.ALWAYS,
                        List.of(),
                        List.of(),
                        List.of(),
                        false,
                        Joint.EngineState.ANY,
                        Joint.Hold.NONE,
                        true),
                new Joint.Work(
                        "top", List.of(), new UndoTime(time, 0, 0, ""), 0, Optional.empty(), List.of(), "", false),
                Makeup.PLAIN);
    }
}
