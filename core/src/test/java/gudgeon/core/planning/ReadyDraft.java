package gudgeon.core.planning;

import gudgeon.core.engine.Condition;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.Literal;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.ReadyKind;
import gudgeon.core.engine.Spend;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A ready operation being written, see {@link EngineBuilder}. In zone {@code top}, by hand, unless told otherwise. */
final class ReadyDraft {
    private final String id;
    private final ReadyKind kind;
    private final long seconds;
    private String zone = "top";
    private List<String> tools = List.of();
    private Condition access = Condition.ALWAYS;
    private final List<String> needs = new ArrayList<>();
    private Optional<String> joint = Optional.empty();
    private List<String> carries = List.of();
    private final List<List<String>> hold = new ArrayList<>();
    private Joint.EngineState state = Joint.EngineState.ANY;
    private final List<Spend> spends = new ArrayList<>();

    ReadyDraft(String id, ReadyKind kind, long seconds) {
        this.id = id;
        this.kind = kind;
        this.seconds = seconds;
    }

    String id() {
        return id;
    }

    ReadyDraft zone(String name) {
        zone = name;
        return this;
    }

    ReadyDraft tools(String... names) {
        tools = List.of(names);
        return this;
    }

    ReadyDraft access(Literal... anyOf) {
        access = EngineBuilder.and(
                access, EngineBuilder.anyOf(anyOf).clauses().getFirst().alternatives());
        return this;
    }

    ReadyDraft needs(String... operations) {
        needs.addAll(List.of(operations));
        return this;
    }

    ReadyDraft joint(String id) {
        joint = Optional.of(id);
        return this;
    }

    ReadyDraft carries(String... parts) {
        carries = List.of(parts);
        return this;
    }

    ReadyDraft hold(String... joints) {
        hold.add(List.of(joints));
        return this;
    }

    ReadyDraft state(Joint.EngineState value) {
        state = value;
        return this;
    }

    ReadyDraft destroys(String spec, int count, double priceEach) {
        spends.add(new Spend(spec, count, OptionalDouble.of(priceEach)));
        return this;
    }

    Ready build() {
        return new Ready(
                id,
                id,
                kind,
                seconds,
                zone,
                tools,
                access,
                needs,
                joint,
                new Ready.Effect(
                        OptionalDouble.empty(), carries, new Joint.Hold(hold), state, "", spends, List.of(), ""));
    }
}
