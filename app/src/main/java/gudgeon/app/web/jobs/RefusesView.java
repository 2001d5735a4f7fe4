package gudgeon.app.web.jobs;

/**
 * The question whether a joint really will not come.
 *
 * @param joint id
 * @param cut how it is cut; empty when the file knows no way
 * @param back where the page came from
 * @param entry names the entry that the form makes
 */
public record RefusesView(String joint, String name, String cut, String path, String back, String entry) {}
