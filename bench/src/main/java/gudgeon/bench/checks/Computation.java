package gudgeon.bench.checks;

/** One function of the check tables: from a row's arguments to its value, or its values in the order of the row. */
@FunctionalInterface
interface Computation {
    /**
     * @param args the row's arguments, units as their keys say
     * @return the value or values, in the unit that the function's table names
     * @throws IllegalArgumentException when an argument is absent, of another kind, or out of the valid range
     */
    double[] of(Args args);

    /** A function of one value. */
    static Computation one(java.util.function.ToDoubleFunction<Args> function) {
        return args -> new double[] {function.applyAsDouble(args)};
    }
}
