package gudgeon.core.engine;

import java.util.List;
import java.util.function.Predicate;

/**
 * A condition in conjunctive form: every clause is needed, a clause is met by any one of its alternatives, an alternative
 * is met when all its literals hold.
 *
 * @param clauses the clauses, all needed; empty means always met
 */
public record Condition(List<Clause> clauses) {
    /** Always met. */
    public static final Condition ALWAYS = new Condition(List.of());

    public Condition {
        clauses = List.copyOf(clauses);
    }

    /** A choice of alternatives, at least one. */
    public record Clause(List<Alternative> alternatives) {
        public Clause {
            alternatives = List.copyOf(alternatives);
            if (alternatives.isEmpty()) {
                throw new IllegalArgumentException("a clause needs at least one alternative");
            }
        }
    }

    /** Literals that must hold together, at least one. */
    public record Alternative(List<Literal> literals) {
        public Alternative {
            literals = List.copyOf(literals);
            if (literals.isEmpty()) {
                throw new IllegalArgumentException("an alternative needs at least one literal");
            }
        }
    }

    /** Whether it is met when these facts hold. */
    public boolean holds(Predicate<Literal> fact) {
        return clauses.stream().allMatch(clause -> clause.alternatives().stream()
                .anyMatch(alternative -> alternative.literals().stream().allMatch(fact)));
    }

    /** All literals of all alternatives, in file order, repeats kept. */
    public List<Literal> literals() {
        return clauses.stream()
                .flatMap(clause -> clause.alternatives().stream())
                .flatMap(alternative -> alternative.literals().stream())
                .toList();
    }
}
