package gudgeon.core.finding;

/**
 * What a cylinder is like with all that is wrong in it.
 *
 * @param leak its leak beyond sound rings
 * @param spread sum over grades of (area times scatter) squared
 * @param fill factor on the charge
 * @param ratio factor on the compression ratio
 * @param closed ring leak that oil closes
 * @param power share of normal torque
 * @param viaExhaust chance that a breach is heard at the neighbour's open exhaust valve
 * @param viaIntake likewise at its intake valve
 * @param common logarithm of compression that all cylinders share, which does not show where they are compared
 */
record Condition(
        Leak leak,
        double spread,
        double fill,
        double ratio,
        double closed,
        double power,
        double viaExhaust,
        double viaIntake,
        double common) {
    static final Condition HEALTHY = new Condition(Leak.NONE, 0, 1, 1, 0, 1, 0, 0, 0);

    Condition with(Grade grade) {
        double area = grade.leak().total() * grade.scatter();
        return new Condition(
                leak.plus(grade.leak()),
                spread + area * area,
                fill * grade.fill(),
                ratio * grade.ratio(),
                closed + grade.oilCloses() * grade.leak().rings(),
                power * grade.power(),
                viaExhaust,
                viaIntake,
                common);
    }

    Condition with(Condition other) {
        return new Condition(
                leak.plus(other.leak),
                spread + other.spread,
                fill * other.fill,
                ratio * other.ratio,
                closed + other.closed,
                power * other.power,
                Math.max(viaExhaust, other.viaExhaust),
                Math.max(viaIntake, other.viaIntake),
                common + other.common);
    }

    Condition heardAt(double exhaust, double intake) {
        return new Condition(leak, spread, fill, ratio, closed, power, exhaust, intake, common);
    }

    /** The same when all cylinders are like this: work and current, which are compared, do not show it. */
    Condition shared(double meanPower, double meanCompression) {
        return new Condition(
                leak, spread, fill, ratio, closed, power / meanPower, viaExhaust, viaIntake, meanCompression);
    }

    /** Whether it differs from a sound cylinder in nothing that a figure could show. */
    boolean sound() {
        return equals(HEALTHY);
    }
}
