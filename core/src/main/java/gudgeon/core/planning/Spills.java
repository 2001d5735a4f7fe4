package gudgeon.core.planning;

import gudgeon.core.engine.Circuit;
import gudgeon.core.engine.Contents;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Ready;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * How fluids fall while an engine is opened (docs/planning.md, Fluids): what stands below a drain stays; a joint opened below
 * the surface lets out what stands above it. Follows the levels of one strip, step by step; cost: steps times circuits.
 */
public final class Spills {
    private final Engine engine;
    private final Map<String, Double> level_mm = new LinkedHashMap<>();

    private Spills(Engine engine) {
        this.engine = engine;
        for (Circuit circuit : engine.circuits()) {
            circuit.contents().ifPresent(contents -> level_mm.put(circuit.id(), contents.full_mm()));
        }
    }

    /** The levels of an engine whose named joints are undone and whose named ready operations are done already. */
    public static Spills from(Engine engine, List<String> undone, List<String> done) {
        Spills spills = new Spills(engine);
        done.stream().filter(id -> isDrain(engine, id)).forEach(spills::drain);
        undone.forEach(spills::undo);
        return spills;
    }

    private static boolean isDrain(Engine engine, String ready) {
        return engine.circuits().stream().anyMatch(circuit -> circuit.drains().contains(ready));
    }

    /**
     * What a step lets out.
     *
     * @param circuit id
     * @param litres how much runs out
     * @param left_litres what stands in the circuit after it
     * @param caught whether it runs out on purpose, into a pan set under it; else it spills
     */
    public record Loss(String circuit, double litres, double left_litres, boolean caught) {}

    /** A drain is opened: what stands above it runs out, of every circuit that it drains. */
    public List<Loss> drain(String ready) {
        Ready operation = engine.ready(ready);
        OptionalDouble height_mm = operation.effect().height_mm();
        List<Loss> losses = new ArrayList<>();
        if (height_mm.isPresent()) {
            for (Circuit circuit : engine.circuits()) {
                if (circuit.drains().contains(ready)) {
                    fall(circuit, height_mm.getAsDouble(), true, losses);
                }
            }
        }
        return losses;
    }

    /** A joint is undone: of every circuit that it opens, what stands above it spills. */
    public List<Loss> undo(String id) {
        Joint joint = engine.joint(id);
        List<Loss> losses = new ArrayList<>();
        for (String opened : joint.freedom().opens()) {
            Circuit circuit = engine.circuit(opened);
            circuit.contents()
                    .map(contents -> contents.openedBy(id))
                    .ifPresent(height -> height.ifPresent(z_mm -> fall(circuit, z_mm, false, losses)));
        }
        return losses;
    }

    /** What stands in a circuit now, in litres; empty when the file does not say how high it stands. */
    public OptionalDouble left(String circuit) {
        Double level = level_mm.get(circuit);
        return level == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(engine.circuit(circuit).contents().orElseThrow().below(level));
    }

    private void fall(Circuit circuit, double to_mm, boolean caught, List<Loss> losses) {
        Contents contents = circuit.contents().orElse(null);
        if (contents == null) {
            return;
        }
        double before_mm = Objects.requireNonNull(level_mm.get(circuit.id()));
        double after_mm = Math.min(before_mm, to_mm);
        double litres = contents.below(before_mm) - contents.below(after_mm);
        level_mm.put(circuit.id(), after_mm);
        if (litres > 0) {
            losses.add(new Loss(circuit.id(), litres, contents.below(after_mm), caught));
        }
    }

    /**
     * A way of draining a circuit in a strip.
     *
     * @param drain id of the ready operation
     * @param caught_litres what runs out there
     * @param spilled_litres what spills later at the joints that are undone
     * @param left_litres what stands in the circuit at the end
     * @param seconds how long draining there takes
     */
    public record DrainChoice(
            String drain, double caught_litres, double spilled_litres, double left_litres, long seconds) {}

    /**
     * Every drain of a circuit, as if it were the one opened before the joints of a strip are undone: least spilled first,
     * then the quickest. Drains without a height are left out.
     *
     * @param joints ids of the joints that are undone, in order
     */
    public static List<DrainChoice> drains(Engine engine, String circuit, List<String> joints) {
        List<DrainChoice> choices = new ArrayList<>();
        for (String drain : engine.circuit(circuit).drains()) {
            if (engine.ready(drain).effect().height_mm().isEmpty()
                    || engine.circuit(circuit).contents().isEmpty()) {
                continue;
            }
            Spills spills = new Spills(engine);
            double caught = sum(spills.drain(drain), circuit);
            double spilled = 0;
            for (String joint : joints) {
                spilled += sum(spills.undo(joint), circuit);
            }
            choices.add(new DrainChoice(
                    drain,
                    caught,
                    spilled,
                    spills.left(circuit).orElse(0),
                    engine.ready(drain).seconds()));
        }
        choices.sort(java.util.Comparator.comparingDouble((DrainChoice choice) -> Math.round(choice.spilled_litres() * 1000))
                .thenComparingLong(DrainChoice::seconds));
        return choices;
    }

    private static double sum(List<Loss> losses, String circuit) {
        return losses.stream()
                .filter(loss -> loss.circuit().equals(circuit))
                .mapToDouble(Loss::litres)
                .sum();
    }
}
