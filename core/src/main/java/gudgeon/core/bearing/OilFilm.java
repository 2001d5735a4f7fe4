package gudgeon.core.bearing;

/**
 * The oil film of a plain bearing with a full bush: Reynolds' equation for a film that begins where the gap is widest, at the
 * pressure outside, and breaks where its pressure would fall below that (Swift and Stieber's condition). Solved by finite
 * differences with successive over-relaxation; two grids are combined (Richardson) to take out the leading error. Checked
 * against Raimondi and Boyd's tables of 1958.
 *
 * <p>All results are pure numbers. Cost grows with the number of grid points times its square root; a film takes some
 * milliseconds.
 *
 * @param lengthToDiameter the bush's length over the journal's diameter, 0.05 to 20
 * @param eccentricityRatio the journal's offset over the radial clearance, 0.01 to 0.97
 * @param sommerfeld Sommerfeld number (r/c)² μN/P with N in turns a second and P load over projected area
 * @param attitude_deg angle between the load's line and the least film, in degrees
 * @param flow flow variable Q/(r c N L): what the film draws in
 * @param sideFlowRatio what leaves at the sides, as a share of that
 * @param pressureRatio mean pressure P over the greatest
 */
public record OilFilm(
        double lengthToDiameter,
        double eccentricityRatio,
        double sommerfeld,
        double attitude_deg,
        double flow,
        double sideFlowRatio,
        double pressureRatio) {
    private static final int COARSE = 90;

    /** The film at an eccentricity. */
    public static OilFilm at(double lengthToDiameter, double eccentricityRatio) {
        between("The length over the diameter", lengthToDiameter, 0.05, 20);
        between("The eccentricity ratio", eccentricityRatio, 0.01, 0.97);
        FilmGrid coarse = FilmGrid.solved(lengthToDiameter, eccentricityRatio, COARSE);
        FilmGrid fine = FilmGrid.solved(lengthToDiameter, eccentricityRatio, 2 * COARSE);
        return new OilFilm(
                lengthToDiameter,
                eccentricityRatio,
                better(coarse.sommerfeld(), fine.sommerfeld()),
                better(coarse.attitude_deg(), fine.attitude_deg()),
                better(coarse.flowIn(), fine.flowIn()),
                better(coarse.sideFlowRatio(), fine.sideFlowRatio()),
                better(coarse.pressureRatio(), fine.pressureRatio()));
    }

    /**
     * The film that carries a load.
     *
     * @param lengthToDiameter as above
     * @param sommerfeld Sommerfeld number; the eccentricity that belongs to it must lie between 0.01 and 0.97
     */
    public static OilFilm carrying(double lengthToDiameter, double sommerfeld) {
        if (!(sommerfeld > 0) || !Double.isFinite(sommerfeld)) {
            throw new IllegalArgumentException("The Sommerfeld number is " + sommerfeld + "; it must be above 0.");
        }
        double low = 0.01;
        double high = 0.97;
        if (sommerfeld > at(lengthToDiameter, low).sommerfeld() || sommerfeld < at(lengthToDiameter, high).sommerfeld()) {
            throw new IllegalArgumentException("At a Sommerfeld number of " + sommerfeld
                    + " the journal runs centred or nearly touching; this film is not computed."
                    + " Maybe the viscosity or the clearance is in another unit.");
        }
        // The logarithm of the Sommerfeld number falls steadily with the eccentricity.
        for (int i = 0; i < 22; i++) {
            double middle = (low + high) / 2;
            if (at(lengthToDiameter, middle).sommerfeld() > sommerfeld) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return at(lengthToDiameter, (low + high) / 2);
    }

    /** Least film thickness over the radial clearance, 1 − ε. */
    public double leastFilmRatio() {
        return 1 - eccentricityRatio;
    }

    /** Friction variable (r/c) f, the whole gap sheared: 2π²S/√(1−ε²) + ε/2 · sin φ. */
    public double frictionVariable() {
        return 2 * Math.PI * Math.PI * sommerfeld / Math.sqrt(1 - eccentricityRatio * eccentricityRatio)
                + eccentricityRatio / 2 * Math.sin(Math.toRadians(attitude_deg));
    }

    private static double better(double coarse, double fine) {
        return fine + (fine - coarse) / 3;
    }

    private static void between(String what, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(what + " is " + value + "; it must lie between " + low + " and " + high + ".");
        }
    }
}
