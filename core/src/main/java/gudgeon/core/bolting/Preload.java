package gudgeon.core.bolting;

/**
 * Preload by strength, by angle and by stretch; formulas that need no head.
 *
 * <p>Source: [VDI2230]; the elastic formulas are Hooke's law.
 */
public final class Preload {
    /** Torsional moment of resistance in the fully plastic state: pi d³/12, three quarters of that at first yield. */
    private static final double PLASTIC = 1.5;

    private static final double FLANK = 1.155;

    private Preload() {}

    /** Shear stress over tensile stress in the shank while tightening, without unit. */
    static double twist(MetricThread thread, double threadFriction) {
        double d2_mm = thread.pitchDiameter_mm();
        return PLASTIC
                * d2_mm
                / thread.stressDiameter_mm()
                * (thread.pitch_mm() / (Math.PI * d2_mm) + FLANK * threadFriction);
    }

    /**
     * The preload at which tension and torsion together reach a share of the lowest yield stress, newtons.
     *
     * @param yieldShare above 0 and at most 1; 0.9 is customary
     * @param threadFriction coefficient in the thread, 0 to 1
     */
    public static double atYieldShare_N(
            MetricThread thread, PropertyClass grade, double yieldShare, double threadFriction) {
        if (!(yieldShare > 0 && yieldShare <= 1)) {
            throw new IllegalArgumentException("a share of the yield stress lies above 0 and at most at 1, not "
                    + yieldShare + ". Maybe it is in per cent?");
        }
        if (!(threadFriction >= 0 && threadFriction <= 1)) {
            throw new IllegalArgumentException("a coefficient of friction lies from 0 to 1, not " + threadFriction);
        }
        double twist = twist(thread, threadFriction);
        return thread.stressArea_mm2()
                * yieldShare
                * grade.yield_MPa(thread.diameter_mm())
                / Math.sqrt(1 + 3 * twist * twist);
    }

    /**
     * The preload to be counted on: the largest over the tightening factor alpha A (1.0 to about 4, by how it is tightened).
     *
     * @return in the unit of the largest
     */
    public static double least(double largest, double tighteningFactor) {
        if (!(largest >= 0 && tighteningFactor >= 1)) {
            throw new IllegalArgumentException("a tightening factor is 1 or more, not " + tighteningFactor);
        }
        return largest / tighteningFactor;
    }

    /**
     * A bolt as a spring.
     *
     * @param modulus_GPa of the bolt: 205 for steel
     * @param area_mm2 of the stretched length
     * @param length_mm stretched length: clamped, and about half a diameter at each end
     * @param jointCompliance_mm_per_N of what is clamped; 0 for stiff
     */
    public record Spring(double modulus_GPa, double area_mm2, double length_mm, double jointCompliance_mm_per_N) {
        public Spring {
            if (!(modulus_GPa > 0 && area_mm2 > 0 && length_mm > 0 && jointCompliance_mm_per_N >= 0)) {
                throw new IllegalArgumentException(
                        "modulus, area and length of a bolt are above 0, the compliance of a joint at least 0");
            }
        }

        /** Compliance of the bolt alone, millimetres per newton. */
        public double boltCompliance_mm_per_N() {
            return length_mm / (modulus_GPa * 1000 * area_mm2);
        }

        /** Preload gained by an angle below yield, newtons. */
        public double preloadFromAngle_N(double pitch_mm, double angle_deg) {
            return pitch_mm * angle_deg / 360 / (boltCompliance_mm_per_N() + jointCompliance_mm_per_N);
        }

        /** Angle that gains a preload below yield, degrees. */
        public double angleForPreload_deg(double pitch_mm, double preload_N) {
            return preload_N * (boltCompliance_mm_per_N() + jointCompliance_mm_per_N) / pitch_mm * 360;
        }

        /** How much longer the bolt is under a preload, millimetres. */
        public double stretch_mm(double preload_N) {
            return preload_N * boltCompliance_mm_per_N();
        }

        /** Preload of a bolt that has become so much longer, below yield, newtons. */
        public double preloadFromStretch_N(double stretch_mm) {
            return stretch_mm / boltCompliance_mm_per_N();
        }
    }

    /**
     * Nut factor K = T / (F d), without unit: about 0.2 for dry, 0.15 for oiled threads.
     *
     * @throws IllegalArgumentException when preload or diameter is not above 0
     */
    public static double nutFactor(double torque_Nm, double preload_N, double diameter_mm) {
        if (!(preload_N > 0 && diameter_mm > 0)) {
            throw new IllegalArgumentException("preload and diameter are above 0");
        }
        return torque_Nm / (preload_N * diameter_mm / 1000);
    }
}
