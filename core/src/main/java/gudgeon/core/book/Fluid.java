package gudgeon.core.book;

/** What ran out, went in, and was oiled. */
public sealed interface Fluid extends Body {
    /**
     * Fluid is caught.
     *
     * @param circuit id
     * @param litres how much; 0 when not measured
     * @param to where it went: can, recycling point ...; may be empty
     */
    record Drained(String circuit, double litres, String to) implements Fluid {
        public Drained {
            Said.litres(litres);
        }
    }

    record Filled(String circuit, double litres) implements Fluid {
        public Filled {
            Said.litres(litres);
        }
    }

    /** A bare surface is oiled against rust. */
    record Oiled(String surface, String with) implements Fluid {}
}
