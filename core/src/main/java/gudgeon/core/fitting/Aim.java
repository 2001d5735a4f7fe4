package gudgeon.core.fitting;

import java.util.Arrays;

/**
 * What a clearance, a gap or a float should be.
 *
 * @param least_mm smallest allowed, millimetres
 * @param wanted_mm best, between the ends, ends included
 * @param most_mm largest allowed, millimetres
 */
public record Aim(double least_mm, double wanted_mm, double most_mm) {
    /** Far less than any instrument resolves: a reading on the limit is within it. */
    private static final double HAIR_mm = 1e-9;

    public Aim {
        if (!(least_mm <= wanted_mm && wanted_mm <= most_mm && Double.isFinite(most_mm - least_mm))) {
            throw new IllegalArgumentException("what is wanted, " + wanted_mm + " mm, does not lie from " + least_mm
                    + " to " + most_mm + " mm. Maybe the limits are swapped?");
        }
    }

    /** An aim in the middle of its limits. */
    public static Aim between(double least_mm, double most_mm) {
        return new Aim(least_mm, (least_mm + most_mm) / 2, most_mm);
    }

    /** Whether a value is allowed. */
    public boolean holds(double value_mm) {
        return value_mm >= least_mm - HAIR_mm && value_mm <= most_mm + HAIR_mm;
    }

    /** How far a value is from the best, micrometres. */
    public double off_um(double value_mm) {
        return Math.abs(value_mm - wanted_mm) * 1000;
    }

    /**
     * How good a set of fits is, each against an aim.
     *
     * @param outside how many are not allowed
     * @param worst_um the farthest from its best, micrometres
     * @param total_um all distances from the best, micrometres
     */
    public record Quality(int outside, double worst_um, double total_um) {
        static Quality of(Aim aim, double... values_mm) {
            Aim[] aims = new Aim[values_mm.length];
            Arrays.fill(aims, aim);
            return of(aims, values_mm);
        }

        static Quality of(Aim[] aims, double[] values_mm) {
            int outside = 0;
            double worst_um = 0;
            double total_um = 0;
            for (int each = 0; each < values_mm.length; each++) {
                double off_um = aims[each].off_um(values_mm[each]);
                outside += aims[each].holds(values_mm[each]) ? 0 : 1;
                worst_um = Math.max(worst_um, off_um);
                total_um += off_um;
            }
            return new Quality(outside, worst_um, total_um);
        }
    }
}
