package gudgeon.core.planning;

import gudgeon.core.engine.Condition;
import gudgeon.core.engine.Literal;
import gudgeon.core.engine.Part;
import gudgeon.core.quantity.Mass;
import java.util.List;
import java.util.Optional;

/** A part being written, see {@link EngineBuilder}. */
final class PartDraft {
    private final String id;
    private Optional<Mass> mass;
    private Condition lift = Condition.ALWAYS;

    PartDraft(String id, double kilograms) {
        this.id = id;
        this.mass = Optional.of(Mass.ofKilograms(kilograms));
    }

    /** The file does not say what it weighs. */
    PartDraft unknownMass() {
        mass = Optional.empty();
        return this;
    }

    /** One more clause of its lift condition: any of these literals. */
    PartDraft lift(Literal... anyOf) {
        lift = EngineBuilder.and(
                lift, EngineBuilder.anyOf(anyOf).clauses().getFirst().alternatives());
        return this;
    }

    PartDraft lift(List<Condition.Alternative> alternatives) {
        lift = EngineBuilder.and(lift, alternatives);
        return this;
    }

    Part build() {
        return new Part(id, id, "", mass, lift, Part.Care.NONE);
    }
}
