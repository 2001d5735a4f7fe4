package gudgeon.app.format;

/** How much of one unit another one is. */
public final class UnitFactor {
    private UnitFactor() {}

    /**
     * How many of the second unit one of the first is.
     *
     * @param from as it is written, like {@code lbf·ft}
     * @param to as it is written, of the same kind
     * @throws IllegalArgumentException when one is not known, means two things, or measures something else
     */
    public static double of(String from, String to) {
        UnitWords.Meaning first = meaning(from);
        UnitWords.Meaning second = meaning(to);
        if (!first.kind().equals(second.kind())) {
            throw new IllegalArgumentException(from + " and " + to + " measure different things: "
                    + QuantityKind.valueOf(first.kind()).words() + " and "
                    + QuantityKind.valueOf(second.kind()).words() + ".");
        }
        return Quantities.convert("1", first.unit(), second.unit());
    }

    private static UnitWords.Meaning meaning(String unit) {
        UnitWords.question(unit).ifPresent(question -> {
            throw new IllegalArgumentException("The unit " + Wording.shown(unit) + " means two things: " + question);
        });
        return UnitWords.find(unit)
                .orElseThrow(() -> new IllegalArgumentException("The unit " + Wording.shown(unit) + " is not known."));
    }
}
