package gudgeon.core.finding;

/**
 * The highest pressure in a cylinder that is cranked, with a leak: crank and rod, polytropic compression, gas lost through the
 * leak as through a nozzle. Valid for slow cranking; heat loss is in the exponent. Cost: some 700 steps of a quarter degree.
 *
 * @param swept volume of the cylinder, m³
 * @param ratio compression ratio
 * @param speed rev/min
 * @param ambient Pa
 */
record CrankingPressure(double swept, double ratio, double speed, double ambient) {
    private static final double EXPONENT = 1.30;
    private static final double INLET_CLOSES = 45; // degrees after bottom, typical
    private static final double ROD_OVER_THROW = 3.5;
    private static final double CHARGE_K = 310;
    private static final double CHARGE_SHARE = 0.97;
    private static final double CONSTANT = 287;
    private static final double STEP = 0.25;

    /** Effective area of a 0.040 inch orifice, m²; a coefficient of 0.8 is typical. */
    static final double ORIFICE = Math.PI / 4 * 1.016e-3 * 1.016e-3 * 0.80;

    /** Highest absolute pressure, Pa, with a leak of this effective area, m². */
    double highest(double leak_m2) {
        double clearance = swept / (ratio - 1);
        double angle = -180 + INLET_CLOSES;
        double volume = volume(clearance, angle);
        double pressure = CHARGE_SHARE * ambient;
        double temperature = CHARGE_K;
        double highest = pressure;
        double seconds = STEP / (6 * speed);
        while (angle < 30) {
            double next = volume(clearance, angle + STEP);
            double squeezed = pressure * Math.pow(volume / next, EXPONENT);
            double warmer = temperature * Math.pow(volume / next, EXPONENT - 1);
            double flow = squeezed > ambient
                    ? LeakFlow.massFlow(leak_m2, squeezed, ambient, warmer, CONSTANT, LeakFlow.AIR)
                    : 0;
            double lost = Math.min(0.5, flow * seconds * CONSTANT * warmer / (squeezed * next));
            pressure = squeezed * Math.pow(1 - lost, EXPONENT);
            temperature = warmer * Math.pow(1 - lost, EXPONENT - 1);
            volume = next;
            angle += STEP;
            highest = Math.max(highest, pressure);
        }
        return highest;
    }

    /** Highest gauge pressure over that without a leak. */
    double kept(double leak_m2) {
        return (highest(leak_m2) - ambient) / (highest(0) - ambient);
    }

    /** What oil above the piston does alone: gauge pressure with this much less clearance over that without. */
    double withOil(double oil_m3, double leak_m2) {
        double clearance = swept / (ratio - 1) - oil_m3;
        CrankingPressure filled = new CrankingPressure(swept, swept / clearance + 1, speed, ambient);
        return (filled.highest(leak_m2) - ambient) / (highest(leak_m2) - ambient);
    }

    private double volume(double clearance, double degrees) {
        double angle = Math.toRadians(degrees);
        double sine = Math.sin(angle);
        double travel =
                1 + ROD_OVER_THROW - Math.cos(angle) - Math.sqrt(ROD_OVER_THROW * ROD_OVER_THROW - sine * sine);
        return clearance + swept * travel / 2;
    }
}
