package gudgeon.app.desk;

/**
 * Who says something.
 *
 * @param by name; empty when not said
 * @param device what it was written on; empty when not said
 * @param session working session; empty for the one that is open
 */
public record Who(String by, String device, String session) {
    public static final Who SOMEBODY = new Who("", "", "");

    Who in(String open) {
        return new Who(by, device, open);
    }
}
