package gudgeon.app.document;

/**
 * What every title block says about the sheet's origin.
 *
 * @param job the job or the engine it is for; empty to name only the engine
 * @param date the date of the sheet as it is to be printed; empty to leave it out
 */
public record Issue(String job, String date) {
    /** Neither job nor date. */
    public static final Issue NONE = new Issue("", "");
}
