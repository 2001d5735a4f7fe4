package gudgeon.core.inference;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A Bayesian network of discrete variables, asked exactly by elimination of variables: at each step the one whose table is
 * smallest goes. Cost: exponential in the largest table only, which is small for networks that look like trees. Source:
 * [KOLLER] 9.3.
 */
public final class Network {
    private static final double SUM_SLACK = 1e-9;

    private final Map<String, Variable> variables = new LinkedHashMap<>();
    private final Map<String, Factor> tables = new LinkedHashMap<>();

    /**
     * Adds a variable whose causes are in already.
     *
     * @param variable the new variable
     * @param causes names of its causes
     * @param table chances of the variable's states for every combination of the causes' states: the causes in their order
     *     with the last changing fastest, and fastest of all the variable itself
     * @throws IllegalArgumentException when a name is unknown or taken, or a row does not sum to one
     */
    public Network add(Variable variable, List<String> causes, double... table) {
        if (variables.containsKey(variable.name())) {
            throw new IllegalArgumentException("two variables are called " + variable.name());
        }
        List<Variable> over = new ArrayList<>();
        causes.forEach(cause -> over.add(variable(cause)));
        over.add(variable);
        int states = variable.states().size();
        for (int row = 0; row * states < table.length; row++) {
            double sum = 0;
            for (int i = 0; i < states; i++) {
                double chance = table[row * states + i];
                if (!(chance >= 0 && chance <= 1)) {
                    throw new IllegalArgumentException(variable.name() + " has the chance " + chance);
                }
                sum += chance;
            }
            if (Math.abs(sum - 1) > SUM_SLACK) {
                throw new IllegalArgumentException("row " + row + " of " + variable.name() + " sums to " + sum);
            }
        }
        tables.put(variable.name(), new Factor(over, table.clone()));
        variables.put(variable.name(), variable);
        return this;
    }

    /** The variable of a name. */
    public Variable variable(String name) {
        Variable variable = variables.get(name);
        if (variable == null) {
            throw new IllegalArgumentException("no variable is called " + name + ". Maybe it is added too late?");
        }
        return variable;
    }

    /** Every variable, in the order of adding. */
    public List<Variable> variables() {
        return List.copyOf(variables.values());
    }

    /** The answer to evidence in which each named variable is in one of the named states. */
    public Answer ask(Map<String, List<String>> evidence) {
        List<Factor> seen = new ArrayList<>();
        evidence.forEach((name, states) -> {
            Variable variable = variable(name);
            double[] allowed = new double[variable.states().size()];
            states.forEach(state -> allowed[variable.index(state)] = 1);
            seen.add(new Factor(List.of(variable), allowed));
        });
        return answer(seen);
    }

    /** The answer to readings: for each named variable the likelihood of what was seen in each of its states. */
    public Answer weigh(Map<String, double[]> likelihoods) {
        List<Factor> seen = new ArrayList<>();
        likelihoods.forEach((name, values) -> seen.add(new Factor(List.of(variable(name)), values.clone())));
        return answer(seen);
    }

    private Answer answer(List<Factor> seen) {
        double chance = eliminate(seen, List.of()).total();
        if (!(chance > 0)) {
            return new Answer.Impossible();
        }
        Map<String, double[]> beliefs = new LinkedHashMap<>();
        for (Variable variable : variables.values()) {
            double[] belief = eliminate(seen, List.of(variable)).values();
            for (int i = 0; i < belief.length; i++) {
                belief[i] /= chance;
            }
            beliefs.put(variable.name(), belief);
        }
        return new Answer.Believed(chance, this, Collections.unmodifiableMap(beliefs));
    }

    private Factor eliminate(List<Factor> seen, List<Variable> kept) {
        List<Factor> factors = new ArrayList<>(tables.values());
        factors.addAll(seen);
        List<Variable> left = new ArrayList<>(variables.values());
        left.removeAll(kept);
        while (!left.isEmpty()) {
            Variable next = cheapest(left, factors);
            left.remove(next);
            List<Factor> with = factors.stream().filter(factor -> factor.has(next)).toList();
            factors.removeAll(with);
            factors.add(product(with).without(next));
        }
        return product(factors);
    }

    private static Variable cheapest(List<Variable> left, List<Factor> factors) {
        Variable best = left.getFirst();
        double least = Double.POSITIVE_INFINITY;
        for (Variable variable : left) {
            double size = factors.stream()
                    .filter(factor -> factor.has(variable))
                    .flatMap(factor -> factor.variables().stream())
                    .distinct()
                    .mapToDouble(each -> each.states().size())
                    .reduce(1, (a, b) -> a * b);
            if (size < least) {
                least = size;
                best = variable;
            }
        }
        return best;
    }

    private static Factor product(List<Factor> factors) {
        Factor product = new Factor(List.of(), new double[] {1});
        for (Factor factor : factors) {
            product = product.times(factor);
        }
        return product;
    }
}
