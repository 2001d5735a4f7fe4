package gudgeon.core.forecast;

/**
 * What a file says a piece of work takes.
 *
 * @param kind what sort of work, for the pace; any word
 * @param minutes of work, the expected seizure left out
 * @param waitMinutes that pass whatever one does
 * @param seizureChance 0 to 1
 * @param seizureMinutes lost when it is seized
 */
public record Nominal(String kind, double minutes, double waitMinutes, double seizureChance, double seizureMinutes) {
    public Nominal {
        if (!(minutes >= 0 && waitMinutes >= 0 && seizureMinutes >= 0 && seizureChance >= 0 && seizureChance <= 1)) {
            throw new IllegalArgumentException("times are 0 or more and a chance lies between 0 and 1, not " + minutes
                    + ", " + waitMinutes + ", " + seizureMinutes + ", " + seizureChance);
        }
    }

    /** Work that cannot be seized. */
    public static Nominal work(String kind, double minutes) {
        return new Nominal(kind, minutes, 0, 0, 0);
    }
}
