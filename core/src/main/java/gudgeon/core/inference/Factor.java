package gudgeon.core.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A table of numbers over the states of some variables; the last variable changes fastest. Cost: its length. */
final class Factor {
    private final List<Variable> variables;
    private final double[] values;

    Factor(List<Variable> variables, double[] values) {
        this.variables = List.copyOf(variables);
        this.values = values;
        if (size(variables) != values.length) {
            throw new IllegalArgumentException("a table over " + names(variables) + " has " + size(variables)
                    + " numbers, not " + values.length);
        }
    }

    static int size(List<Variable> variables) {
        int size = 1;
        for (Variable variable : variables) {
            size = Math.multiplyExact(size, variable.states().size());
        }
        return size;
    }

    static List<String> names(List<Variable> variables) {
        return variables.stream().map(Variable::name).toList();
    }

    List<Variable> variables() {
        return variables;
    }

    double[] values() {
        return values.clone();
    }

    boolean has(Variable variable) {
        return variables.contains(variable);
    }

    double total() {
        return Arrays.stream(values).sum();
    }

    /** The product, over the variables of both. */
    Factor times(Factor other) {
        List<Variable> all = new ArrayList<>(variables);
        other.variables.stream().filter(variable -> !has(variable)).forEach(all::add);
        int[] own = steps(all, this);
        int[] others = steps(all, other);
        double[] product = new double[size(all)];
        int[] digits = new int[all.size()];
        int a = 0;
        int b = 0;
        for (int i = 0; i < product.length; i++) {
            product[i] = values[a] * other.values[b];
            for (int d = digits.length - 1; d >= 0; d--) {
                int states = all.get(d).states().size();
                digits[d]++;
                a += own[d];
                b += others[d];
                if (digits[d] < states) {
                    break;
                }
                digits[d] = 0;
                a -= own[d] * states;
                b -= others[d] * states;
            }
        }
        return new Factor(all, product);
    }

    /** The sum over one variable. */
    Factor without(Variable variable) {
        int at = variables.indexOf(variable);
        int states = variable.states().size();
        int inner = size(variables.subList(at + 1, variables.size()));
        int outer = values.length / (states * inner);
        double[] sums = new double[outer * inner];
        for (int o = 0; o < outer; o++) {
            for (int s = 0; s < states; s++) {
                for (int i = 0; i < inner; i++) {
                    sums[o * inner + i] += values[(o * states + s) * inner + i];
                }
            }
        }
        List<Variable> rest = new ArrayList<>(variables);
        rest.remove(at);
        return new Factor(rest, sums);
    }

    private static int[] steps(List<Variable> all, Factor factor) {
        int[] steps = new int[all.size()];
        int step = 1;
        for (int i = factor.variables.size() - 1; i >= 0; i--) {
            Variable variable = factor.variables.get(i);
            steps[all.indexOf(variable)] = step;
            step *= variable.states().size();
        }
        return steps;
    }
}
