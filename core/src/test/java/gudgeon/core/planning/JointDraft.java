package gudgeon.core.planning;

import gudgeon.core.engine.Condition;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.JointKind;
import gudgeon.core.engine.Literal;
import gudgeon.core.engine.Makeup;
import gudgeon.core.engine.Spend;
import gudgeon.core.engine.UndoTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A joint being written, see {@link EngineBuilder}. In zone {@code top}, by hand, always free, unless told otherwise. */
final class JointDraft {
    private final String id;
    private final List<String> between;
    private UndoTime undo;
    private Optional<Joint.Hang> hang;
    private String zone = "top";
    private List<String> tools = List.of();
    private Condition access = Condition.ALWAYS;
    private final List<String> needs = new ArrayList<>();
    private final List<String> opens = new ArrayList<>();
    private final List<String> drains = new ArrayList<>();
    private boolean licensed;
    private Joint.EngineState state = Joint.EngineState.ANY;
    private final List<List<String>> hold = new ArrayList<>();
    private boolean rests;
    private Optional<Joint.Cut> cut = Optional.empty();
    private final List<Spend> spends = new ArrayList<>();
    private List<String> cautions = List.of();

    JointDraft(String id, long seconds, List<String> between, Optional<Joint.Hang> hang) {
        this.id = id;
        this.undo = new UndoTime(seconds, 0, 0, "");
        this.between = between;
        this.hang = hang;
    }

    String id() {
        return id;
    }

    List<String> between() {
        return between;
    }

    boolean isDrain() {
        return !drains.isEmpty();
    }

    JointDraft zone(String name) {
        zone = name;
        return this;
    }

    JointDraft tools(String... names) {
        tools = List.of(names);
        return this;
    }

    /** One more clause of its access: any of these literals. */
    JointDraft access(Literal... anyOf) {
        access = EngineBuilder.and(
                access, EngineBuilder.anyOf(anyOf).clauses().getFirst().alternatives());
        return this;
    }

    JointDraft access(List<Condition.Alternative> alternatives) {
        access = EngineBuilder.and(access, alternatives);
        return this;
    }

    JointDraft needs(String... operations) {
        needs.addAll(List.of(operations));
        return this;
    }

    JointDraft opens(String... circuits) {
        opens.addAll(List.of(circuits));
        return this;
    }

    JointDraft drains(String... circuits) {
        drains.addAll(List.of(circuits));
        return this;
    }

    JointDraft licensed() {
        licensed = true;
        return this;
    }

    JointDraft state(Joint.EngineState value) {
        state = value;
        return this;
    }

    /** One more alternative of joints that keep it from turning. */
    JointDraft hold(String... joints) {
        hold.add(List.of(joints));
        return this;
    }

    JointDraft rests() {
        rests = true;
        return this;
    }

    JointDraft strap(String operation) {
        hang = hang.map(before -> new Joint.Hang(before.holdsKilograms(), Optional.of(operation)));
        return this;
    }

    JointDraft seizure(double chance, long seconds) {
        undo = new UndoTime(undo.fastenerSeconds(), chance, seconds, "");
        return this;
    }

    JointDraft cut(long seconds, List<Spend> destroys, String... cutTools) {
        cut = Optional.of(new Joint.Cut(seconds, destroys, List.of(cutTools)));
        return this;
    }

    JointDraft destroys(String spec, int count, double priceEach) {
        spends.add(new Spend(spec, count, OptionalDouble.of(priceEach)));
        return this;
    }

    JointDraft cautions(String... ids) {
        cautions = List.of(ids);
        return this;
    }

    Joint build() {
        Makeup plain = Makeup.PLAIN;
        return new Joint(
                id,
                id,
                JointKind.BOLTED,
                between,
                hang,
                new Joint.Freedom(
                        access, Condition.ALWAYS, needs, opens, drains, licensed, state, new Joint.Hold(hold), rests),
                new Joint.Work(zone, tools, undo, 0, cut, cautions, "", false),
                new Makeup(
                        plain.fasteners(),
                        spends,
                        plain.stages(),
                        plain.pattern(),
                        plain.loosen(),
                        plain.sealant(),
                        plain.after()));
    }
}
