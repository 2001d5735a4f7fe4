package gudgeon.app.store;

import java.io.IOException;
import java.io.UncheckedIOException;

/** The store cannot be read or written: which, and why. What was acknowledged before is safe. */
public final class StoreFailed extends UncheckedIOException {
    private static final long serialVersionUID = 1;

    StoreFailed(String what, Throwable cause) {
        super(what + said(cause), new IOException(cause));
    }

    private static String said(Throwable cause) {
        Throwable root = cause;
        while (root.getCause() != null) {
            root = root.getCause();
        }
        return root.getMessage() == null ? "" : ": " + root.getMessage();
    }
}
