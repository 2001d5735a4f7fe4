package gudgeon.bench.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * A small formula as the tables write them: numbers, names, + - * / ^, parentheses, and sin, cos, tan, sqrt, exp, ln of radians or
 * pure numbers. Worked out together with its first derivatives by every name.
 */
final class Formula {
    private final String text;
    private final List<String> names;
    private final double[] values;
    private int at;

    private Formula(String text, Map<String, Double> inputs) {
        this.text = text;
        this.names = List.copyOf(inputs.keySet());
        this.values = names.stream().mapToDouble(inputs::get).toArray();
    }

    /**
     * The value of a formula and its derivatives.
     *
     * @param inputs value of every name, in the order of the derivatives
     */
    static Worth at(String text, Map<String, Double> inputs) {
        Formula formula = new Formula(text, inputs);
        Worth worth = formula.sum();
        formula.blanks();
        if (formula.at < text.length()) {
            throw formula.wrong("an operator");
        }
        return worth;
    }

    /**
     * @param value the formula's value
     * @param slopes its first derivatives, one an input
     */
    record Worth(double value, double[] slopes) {
        /** The value of a function with a known derivative. */
        Worth of(double outer, double slope) {
            double[] all = new double[slopes.length];
            for (int i = 0; i < all.length; i++) {
                all[i] = slope * slopes[i];
            }
            return new Worth(outer, all);
        }

        /** The value of a function of two with known derivatives. */
        static Worth of(double outer, Worth left, double byLeft, Worth right, double byRight) {
            double[] all = new double[left.slopes.length];
            for (int i = 0; i < all.length; i++) {
                all[i] = byLeft * left.slopes[i] + byRight * right.slopes[i];
            }
            return new Worth(outer, all);
        }
    }

    private Worth sum() {
        Worth left = product();
        while (true) {
            if (taken('+')) {
                Worth right = product();
                left = Worth.of(left.value + right.value, left, 1, right, 1);
            } else if (taken('-')) {
                Worth right = product();
                left = Worth.of(left.value - right.value, left, 1, right, -1);
            } else {
                return left;
            }
        }
    }

    private Worth product() {
        Worth left = signed();
        while (true) {
            if (taken('*')) {
                Worth right = signed();
                left = Worth.of(left.value * right.value, left, right.value, right, left.value);
            } else if (taken('/')) {
                Worth right = signed();
                double over = left.value / right.value;
                left = Worth.of(over, left, 1 / right.value, right, -over / right.value);
            } else {
                return left;
            }
        }
    }

    private Worth signed() {
        if (taken('-')) {
            Worth inner = signed();
            return inner.of(-inner.value, -1);
        }
        return taken('+') ? signed() : power();
    }

    private Worth power() {
        Worth base = atom();
        if (!taken('^')) {
            return base;
        }
        Worth exponent = signed();
        double value = Math.pow(base.value, exponent.value);
        double byBase = exponent.value == 0 ? 0 : exponent.value * Math.pow(base.value, exponent.value - 1);
        double byExponent = base.value > 0 ? value * Math.log(base.value) : 0;
        return Worth.of(value, base, byBase, exponent, byExponent);
    }

    private Worth atom() {
        blanks();
        if (taken('(')) {
            Worth inner = sum();
            close();
            return inner;
        }
        int start = at;
        if (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
            return number();
        }
        while (at < text.length() && (Character.isLetterOrDigit(text.charAt(at)) || text.charAt(at) == '_')) {
            at++;
        }
        String name = text.substring(start, at);
        if (name.isEmpty()) {
            throw wrong("a number, a name or a parenthesis");
        }
        int input = names.indexOf(name);
        if (input >= 0) {
            double[] slopes = new double[values.length];
            slopes[input] = 1;
            return new Worth(values[input], slopes);
        }
        return call(function(name));
    }

    private Worth number() {
        int start = at;
        while (at < text.length()
                && (Character.isDigit(text.charAt(at))
                        || text.charAt(at) == '.'
                        || "eE".indexOf(text.charAt(at)) >= 0
                        || ("+-".indexOf(text.charAt(at)) >= 0 && "eE".indexOf(text.charAt(at - 1)) >= 0))) {
            at++;
        }
        return new Worth(Double.parseDouble(text.substring(start, at)), new double[values.length]);
    }

    private Worth call(UnaryOperator<Worth> function) {
        if (!taken('(')) {
            throw wrong("( after the name of a function");
        }
        Worth inner = sum();
        close();
        return function.apply(inner);
    }

    private UnaryOperator<Worth> function(String name) {
        return switch (name) {
            case "sin" -> x -> x.of(Math.sin(x.value), Math.cos(x.value));
            case "cos" -> x -> x.of(Math.cos(x.value), -Math.sin(x.value));
            case "tan" -> x -> x.of(Math.tan(x.value), 1 + Math.tan(x.value) * Math.tan(x.value));
            case "sqrt" -> x -> x.of(Math.sqrt(x.value), 0.5 / Math.sqrt(x.value));
            case "exp" -> x -> x.of(Math.exp(x.value), Math.exp(x.value));
            case "ln", "log" -> x -> x.of(Math.log(x.value), 1 / x.value);
            case "pi" -> throw wrong("the number instead of pi");
            default ->
                throw new IllegalArgumentException("\"" + name + "\" in the formula is no input and no function");
        };
    }

    private void close() {
        if (!taken(')')) {
            throw wrong(")");
        }
    }

    private boolean taken(char sign) {
        blanks();
        if (at < text.length() && text.charAt(at) == sign) {
            at++;
            return true;
        }
        return false;
    }

    private void blanks() {
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
    }

    private IllegalArgumentException wrong(String needed) {
        List<String> parts = new ArrayList<>(List.of("formula \"" + text + "\": ", needed, " is needed at character "));
        parts.add(String.valueOf(at + 1));
        return new IllegalArgumentException(String.join("", parts));
    }
}
