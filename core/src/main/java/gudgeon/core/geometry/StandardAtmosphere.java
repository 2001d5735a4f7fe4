package gudgeon.core.geometry;

/**
 * Pressure, temperature and density of the standard air over height. Source: [US1976], tables 1 to 4; below 32 km geopotential
 * the same as [ISO2533]. Valid from −5,000 m to 80,000 m of geometric height.
 */
public final class StandardAtmosphere {
    private static final double EARTH_RADIUS_M = 6_356_766;
    private static final double GRAVITY = 9.80665;
    private static final double MOLAR_MASS_KG = 0.0289644;
    private static final double GAS_CONSTANT = 8.31432;
    private static final double[] BASE_M = {0, 11_000, 20_000, 32_000, 47_000, 51_000, 71_000};
    private static final double[] LAPSE_K_PER_M = {-0.0065, 0, 0.001, 0.0028, 0, -0.0028, -0.002};

    private StandardAtmosphere() {}

    private record Layer(int index, double base_K, double base_Pa, double above_m) {}

    /** Pressure at a geometric height in m, in Pa. */
    public static double pressure_Pa(double height_m) {
        Layer layer = layer(height_m);
        return pressureAbove(layer.base_Pa(), layer.base_K(), LAPSE_K_PER_M[layer.index()], layer.above_m());
    }

    /** Temperature at a geometric height in m, in K. */
    public static double temperature_K(double height_m) {
        Layer layer = layer(height_m);
        return layer.base_K() + LAPSE_K_PER_M[layer.index()] * layer.above_m();
    }

    /** Density at a geometric height in m, in kg/m³. */
    public static double density_kg_per_m3(double height_m) {
        return pressure_Pa(height_m) * MOLAR_MASS_KG / (GAS_CONSTANT * temperature_K(height_m));
    }

    private static Layer layer(double height_m) {
        Guard.between("The height", height_m, -5_000, 80_000, "m");
        double geopotential_m = EARTH_RADIUS_M * height_m / (EARTH_RADIUS_M + height_m);
        double base_K = 288.15;
        double base_Pa = 101_325;
        int index = 0;
        while (index + 1 < BASE_M.length && geopotential_m > BASE_M[index + 1]) {
            double thick_m = BASE_M[index + 1] - BASE_M[index];
            base_Pa = pressureAbove(base_Pa, base_K, LAPSE_K_PER_M[index], thick_m);
            base_K += LAPSE_K_PER_M[index] * thick_m;
            index++;
        }
        return new Layer(index, base_K, base_Pa, geopotential_m - BASE_M[index]);
    }

    private static double pressureAbove(double base_Pa, double base_K, double lapse_K_per_m, double above_m) {
        double perMetre = GRAVITY * MOLAR_MASS_KG / GAS_CONSTANT;
        if (lapse_K_per_m == 0) {
            return base_Pa * Math.exp(-perMetre * above_m / base_K);
        }
        return base_Pa * Math.pow(base_K / (base_K + lapse_K_per_m * above_m), perMetre / lapse_K_per_m);
    }
}
