package gudgeon.core.measuring;

/**
 * Where an error comes from. Two lines of a budget with equal sources are one and the same error.
 *
 * @param kind what sort of thing
 * @param of which one: the instrument, the place of the reading, the material; empty where there is only one
 */
public record Source(Kind kind, String of) {
    /** What sort of thing an error comes from. */
    public enum Kind {
        /** An input of a model, by name. */
        INPUT,
        /** What the instrument may err by: its maximum permissible error. */
        INSTRUMENT,
        /** Half of the last figure that can be read. */
        RESOLUTION,
        /** The taker and the part: repeats do not agree. */
        REPEATS,
        /** The same where it was not tried out but assumed. */
        REPEATS_ASSUMED,
        /** The common temperature of part and setting standard. */
        TEMPERATURE,
        /** The part is not quite as warm as the setting standard. */
        TEMPERATURE_DIFFERENCE,
        /** The expansion of the part's material. */
        PART_EXPANSION,
        /** The expansion of the setting standard. */
        STANDARD_EXPANSION,
        /** Few places stand for the whole surface. */
        FORM,
        /** The printed strip that a crushed thread is laid beside. */
        STRIP_CHART,
        /** One feeler passes, the next does not. */
        FEELER,
        /** The size when it was new is known by its tolerance only. */
        NEW_SIZE
    }

    public static Source of(String input) {
        return new Source(Kind.INPUT, input);
    }
}
