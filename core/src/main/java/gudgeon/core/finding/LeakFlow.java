package gudgeon.core.finding;

/**
 * Flow of gas through small holes, as through an ideal nozzle: choked below the critical pressure ratio. Absolute pressures Pa,
 * areas m², temperatures K. Source: [ISO9300]; [AC43.13] for the leak-down tester.
 */
public final class LeakFlow {
    /** Ratio of the heats of air. */
    public static final double AIR = 1.4;

    /** Gas constant of dry air, J/(kg K). */
    public static final double AIR_CONSTANT = 287.05;

    private LeakFlow() {}

    /** Pressure ratio at and below which the flow is choked. */
    public static double criticalRatio(double gamma) {
        return Math.pow(2 / (gamma + 1), gamma / (gamma - 1));
    }

    /**
     * The flow function: flow times root of R T over area and upstream pressure.
     *
     * @param ratio downstream over upstream absolute pressure, 0 to 1
     */
    public static double flowFunction(double ratio, double gamma) {
        if (!(ratio >= 0 && ratio <= 1 + 1e-12)) {
            throw new IllegalArgumentException("a pressure ratio of " + ratio + "; gas flows from high to low");
        }
        double r = Math.min(1, Math.max(ratio, criticalRatio(gamma)));
        double inner = Math.pow(r, 2 / gamma) - Math.pow(r, (gamma + 1) / gamma);
        return Math.sqrt(2 * gamma / (gamma - 1) * Math.max(0, inner));
    }

    /** Mass flow, kg/s, of air through an effective area. */
    public static double massFlow(
            double area_m2, double upstream_Pa, double downstream_Pa, double temperature_K, double constant, double gamma) {
        return area_m2 * upstream_Pa / Math.sqrt(constant * temperature_K)
                * flowFunction(downstream_Pa / upstream_Pa, gamma);
    }

    /**
     * The leak of a cylinder over the tester's orifice, both as effective areas, when the gauge between them stands still.
     *
     * @param supply_Pa absolute pressure before the orifice
     * @param cylinder_Pa absolute pressure in the cylinder, above ambient and at most the supply
     * @param ambient_Pa pressure of the air
     */
    public static double leakOverOrifice(double supply_Pa, double cylinder_Pa, double ambient_Pa) {
        return supply_Pa * flowFunction(cylinder_Pa / supply_Pa, AIR)
                / (cylinder_Pa * flowFunction(ambient_Pa / cylinder_Pa, AIR));
    }

    /** Flow of an ISO 6358 component, in the unit of its sonic conductance times bar: choked below its critical ratio. */
    public static double pneumaticFlow(
            double conductance, double upstream_bar, double criticalRatio, double ratio, double temperatureRatio) {
        double choked = conductance * upstream_bar * Math.sqrt(temperatureRatio);
        if (ratio <= criticalRatio) {
            return choked;
        }
        double part = (ratio - criticalRatio) / (1 - criticalRatio);
        return choked * Math.sqrt(Math.max(0, 1 - part * part));
    }
}
