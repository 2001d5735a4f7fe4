package gudgeon.core.measuring;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * What parts and instruments are made of, with its linear expansion between 0 and 100 °C: typical, and the range that the name
 * covers. Handbook figures, from memory; a maker's own figure is better.
 */
public enum Material {
    GRAY_CAST_IRON(11.0, 10.0, 12.0),
    DUCTILE_CAST_IRON(11.6, 10.5, 12.5),
    CARBON_STEEL(11.5, 10.8, 12.5),
    ALLOY_STEEL(12.3, 11.0, 15.0),
    STAINLESS_STEEL(16.5, 10.0, 17.5),
    GAUGE_STEEL(11.5, 10.5, 12.5),
    CEMENTED_CARBIDE(5.5, 4.5, 7.0),
    ALUMINIUM(23.0, 22.5, 24.0),
    ALUMINIUM_ALLOY(22.5, 19.0, 25.0),
    PISTON_ALLOY(20.0, 17.5, 21.5),
    MAGNESIUM_ALLOY(26.0, 25.0, 28.0),
    COPPER(16.8, 16.5, 17.7),
    BRASS(19.0, 18.0, 21.0),
    BRONZE(18.0, 16.0, 21.0),
    TITANIUM_ALLOY(8.8, 8.4, 9.7),
    GRANITE(6.5, 5.0, 8.5);

    private final double typical;
    private final double low;
    private final double high;

    Material(double typical, double low, double high) {
        this.typical = typical;
        this.low = low;
        this.high = high;
    }

    /** The typical linear expansion, in 1/K. */
    public double expansion_per_K() {
        return typical * 1e-6;
    }

    /** The least that the name covers, in 1/K. */
    public double lowExpansion_per_K() {
        return low * 1e-6;
    }

    /** The most that the name covers, in 1/K. */
    public double highExpansion_per_K() {
        return high * 1e-6;
    }

    /**
     * The material of a name: words in any case, with blanks, hyphens or underscores, one or several ("gray cast irons"), British
     * or American.
     */
    public static Optional<Material> find(String name) {
        String key = key(name);
        return Arrays.stream(values()).filter(material -> material.is(key)).findFirst();
    }

    private boolean is(String key) {
        String own = key(name());
        return own.equals(key)
                || switch (this) {
                    case GRAY_CAST_IRON -> key.equals("cast iron") || key.equals("iron");
                    case DUCTILE_CAST_IRON ->
                        key.equals("ductile iron") || key.equals("nodular iron") || key.equals("nodular cast iron");
                    case CARBON_STEEL -> key.equals("steel") || key.equals("forged steel");
                    case ALUMINIUM_ALLOY -> key.equals("aluminium casting") || key.equals("cast aluminium");
                    case MAGNESIUM_ALLOY -> key.equals("magnesium");
                    case TITANIUM_ALLOY -> key.equals("titanium");
                    case CEMENTED_CARBIDE -> key.equals("carbide") || key.equals("tungsten carbide");
                    case PISTON_ALLOY -> key.equals("piston");
                    case STAINLESS_STEEL, ALLOY_STEEL, GAUGE_STEEL, ALUMINIUM, COPPER, BRASS, BRONZE, GRANITE -> false;
                };
    }

    private static String key(String name) {
        String key = name.toLowerCase(Locale.ROOT)
                .replaceAll("[ _-]+", " ")
                .strip()
                .replace("grey", "gray")
                .replace("aluminum", "aluminium");
        return key.endsWith("s") && !key.endsWith("brass") ? key.substring(0, key.length() - 1) : key;
    }
}
