package gudgeon.core.measuring;

/**
 * How a body grows with warmth.
 *
 * @param name what it is made of
 * @param expansion_per_K linear expansion, in 1/K
 * @param halfWidth_per_K how far that may be off, in 1/K
 */
public record Expanding(String name, double expansion_per_K, double halfWidth_per_K) {
    private static final double LARGEST = 1e-4;

    public Expanding {
        if (!(expansion_per_K >= 0 && expansion_per_K < LARGEST)) {
            throw new IllegalArgumentException(
                    "a linear expansion is between 0 and 100 millionths per kelvin, not " + expansion_per_K);
        }
        if (!(halfWidth_per_K >= 0 && halfWidth_per_K < LARGEST)) {
            throw new IllegalArgumentException(
                    "the doubt of an expansion is between 0 and 100 millionths per kelvin, not " + halfWidth_per_K);
        }
    }

    /** Nobody said what it is made of: steel, iron or aluminium, 11 to 24 millionths. */
    public static Expanding unknown() {
        return new Expanding("UNKNOWN", 17.5e-6, 6.5e-6);
    }

    /** The typical expansion of a material, and the range that its name covers. */
    public static Expanding of(Material material) {
        double half = Math.max(
                material.highExpansion_per_K() - material.expansion_per_K(),
                material.expansion_per_K() - material.lowExpansion_per_K());
        return new Expanding(material.name(), material.expansion_per_K(), half);
    }
}
