package gudgeon.core.finding;

/**
 * How bad a fault can be, and what a cylinder is like with it.
 *
 * @param share of those that have the fault, 0 to 1
 * @param leak the leak that it adds
 * @param fill factor on the charge while cranking
 * @param ratio factor on the compression ratio
 * @param oilCloses share of its ring leak that oil in the bore closes
 * @param power share of a normal cylinder's torque that is left
 * @param scatter standard deviation of the logarithm of the leak's area
 */
public record Grade(
        double share, Leak leak, double fill, double ratio, double oilCloses, double power, double scatter) {
    public Grade {
        if (!(share > 0 && share <= 1)) {
            throw new IllegalArgumentException("a grade's share is " + share + ", above 0 and at most 1 is right");
        }
        if (!(fill > 0 && ratio > 0 && oilCloses >= 0 && oilCloses <= 1 && power >= 0 && scatter >= 0)) {
            throw new IllegalArgumentException("a grade has a negative or too large number");
        }
    }
}
