package gudgeon.app.web.page;

import java.io.Serial;

/** A request that is not carried out: says why, and what would be right. Becomes the error page. */
public final class Refusal extends RuntimeException {
    @Serial
    private static final long serialVersionUID = 1L;

    private final int status;
    private final String wouldBeRight;

    /**
     * @param status HTTP status, 400 to 599
     * @param what what is wrong, one sentence
     * @param wouldBeRight what would be right, one sentence; empty when nothing can be said
     */
    public Refusal(int status, String what, String wouldBeRight) {
        super(what);
        if (status < 400 || status > 599) {
            throw new IllegalArgumentException("a refusal has a status of 400 to 599, not " + status);
        }
        this.status = status;
        this.wouldBeRight = wouldBeRight;
    }

    /** Something asked for by name does not exist. */
    public static Refusal missing(String what, String wouldBeRight) {
        return new Refusal(404, what, wouldBeRight);
    }

    /** The request does not make sense. */
    public static Refusal wrong(String what, String wouldBeRight) {
        return new Refusal(400, what, wouldBeRight);
    }

    public int status() {
        return status;
    }

    /** What is wrong. */
    public String what() {
        return String.valueOf(getMessage());
    }

    public String wouldBeRight() {
        return wouldBeRight;
    }
}
