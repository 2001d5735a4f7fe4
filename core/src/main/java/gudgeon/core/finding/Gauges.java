package gudgeon.core.finding;

import gudgeon.core.finding.FindingKind.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What instruments show on one engine for a cylinder in a given condition: means and scatters. Logarithms are natural.
 * Compression is relative to the healthy cylinder's gauge pressure, which is a variable of the model.
 */
final class Gauges {
    /** Range in which a bad reading may lie anywhere: logarithm of compression over healthy. */
    static final double[] COMPRESSION = {-4.0, 1.0};

    /** The same for the logarithm of the wet ratio. */
    static final double[] WET = {-0.5, 1.3};

    /** The same for the logarithm of the leak in orifices. */
    static final double[] LEAK = {-3.0, 4.2};

    /** The same for relative humps of current, and relative falls of speed. */
    static final double[] RELATIVE = {-0.5, 2.0};

    private static final double RATIO_EXPONENT = 1.3;
    private static final double STEP = 0.1;
    private static final double MOST_ROOT = 6;

    private final Physics physics;
    private final CrankingPressure cranking;
    private final double[] lnKept;
    private final Map<Double, Double> oilGain = new LinkedHashMap<>();

    Gauges(Physics physics, EngineFacts facts) {
        this.physics = physics;
        cranking = new CrankingPressure(
                facts.sweptVolume() / facts.cylinders(),
                facts.ratio(),
                facts.cranking().speed(),
                facts.cranking().ambient());
        double free = cranking.highest(0) - cranking.ambient();
        lnKept = new double[(int) Math.round(MOST_ROOT / STEP) + 2];
        for (int i = 0; i < lnKept.length; i++) {
            double leak = i * STEP * i * STEP;
            double gauge = cranking.highest(leak * CrankingPressure.ORIFICE) - cranking.ambient();
            lnKept[i] = Math.log(Math.max(gauge / free, 1e-3));
        }
    }

    /** Logarithm of the pressure kept with a leak of so many orifices; a table over the root of the leak. */
    double lnKept(double orifices) {
        double at = Math.min(Math.sqrt(orifices) / STEP, lnKept.length - 1.001);
        int low = (int) at;
        return lnKept[low] + (at - low) * (lnKept[low + 1] - lnKept[low]);
    }

    /** How fast it falls with the logarithm of the leak. */
    private double slope(double orifices) {
        return (lnKept(orifices * 1.05) - lnKept(orifices / 1.05)) / (2 * Math.log(1.05));
    }

    private double total(Condition condition) {
        return physics.healthy().rings() + condition.leak().total();
    }

    private double spread(Condition condition) {
        double sound = physics.healthy().rings() * physics.healthy().scatter();
        return Math.sqrt(condition.spread() + sound * sound) / total(condition);
    }

    /** What filling and ratio alone do to the logarithm of compression. */
    double shift(Condition condition) {
        return Math.log(condition.fill()) + RATIO_EXPONENT * Math.log(condition.ratio());
    }

    /** Logarithm of compression over that of a healthy cylinder, and its scatter, into the array. */
    void compression(Condition condition, double[] into) {
        double leak = total(condition);
        into[0] = shift(condition) + lnKept(leak) - lnKept(physics.healthy().rings());
        double area = slope(leak) * spread(condition);
        into[1] = Math.sqrt(physics.compression().scatter() * physics.compression().scatter() + area * area);
    }

    /** Logarithm of wet over dry, and its scatter. */
    void wet(Condition condition, double oil_m3, double[] into) {
        double leak = total(condition);
        double after = Math.max(leak - condition.closed(), 0.05);
        into[0] = Math.log(gainOfOil(oil_m3)) + lnKept(after) - lnKept(leak);
        double area = (slope(after) - slope(leak)) * spread(condition);
        into[1] = Math.sqrt(physics.wet().scatter() * physics.wet().scatter() + area * area);
    }

    /** What the volume of oil does alone. */
    double gainOfOil(double oil_m3) {
        return oilGain.computeIfAbsent(
                oil_m3,
                oil -> cranking.withOil(
                        oil * physics.wet().volumeCounts(), physics.healthy().rings() * CrankingPressure.ORIFICE));
    }

    /** Clearance volume of a cylinder, m³. */
    double clearance() {
        return cranking.swept() / (cranking.ratio() - 1);
    }

    /** Logarithm of the leak in orifices, and its scatter. */
    void leak(Condition condition, double extraScatter, double[] into) {
        into[0] = Math.log(total(condition));
        double spread = spread(condition);
        into[1] = Math.sqrt(physics.leak() * physics.leak() + spread * spread + extraScatter * extraScatter);
    }

    /** Relative hump of the starter's current, and its scatter. */
    void current(Condition condition, double[] into) {
        compression(condition, into);
        double hump = Math.exp(into[0] - condition.common());
        double area = hump * into[1];
        into[0] = hump;
        into[1] = Math.sqrt(physics.current() * physics.current() + area * area);
    }

    /** Relative fall of speed when cut, and its scatter. */
    void balance(Condition condition, double[] into) {
        into[0] = condition.power();
        into[1] = physics.balance();
    }

    /** Chance that a leak is clearly heard or seen at a place. */
    double heard(Condition condition, Path path) {
        Leak leak = condition.leak();
        double area =
                switch (path) {
                    case EXHAUST -> leak.exhaust();
                    case INTAKE -> leak.intake();
                    case CRANKCASE -> leak.rings() + leak.oilway() + physics.healthy().rings();
                    case COOLANT -> leak.coolant();
                    case NEIGHBOUR -> leak.neighbour();
                    case OUTSIDE -> leak.outside();
                };
        Physics.Hearing hearing = hearing(path);
        double chance = hearing.chance(area);
        double via =
                switch (path) {
                    case EXHAUST -> condition.viaExhaust();
                    case INTAKE -> condition.viaIntake();
                    case CRANKCASE, COOLANT, NEIGHBOUR, OUTSIDE -> 0;
                };
        return 1 - (1 - chance) * (1 - via);
    }

    private Physics.Hearing hearing(Path path) {
        Physics.Hearing hearing = physics.hearing().get(path);
        if (hearing == null) {
            throw new IllegalStateException("hearing is known for every path");
        }
        return hearing;
    }
}
