package gudgeon.app.web.page;

import io.javalin.http.Context;

/** The one page for everything that is refused or fails: where, what, and what would be right. */
public final class ErrorPage {
    private final Pages pages;

    public ErrorPage(Pages pages) {
        this.pages = pages;
    }

    /**
     * @param status HTTP status
     * @param where the path that was asked for
     */
    public record View(int status, String heading, String where, String what, String wouldBeRight) {}

    /** Shows a refusal. */
    public void refuse(Context request, Refusal refusal) {
        show(request, refusal.status(), refusal.what(), refusal.wouldBeRight());
    }

    /** A path that leads nowhere. */
    public void missing(Context request) {
        show(request, 404, "There is no page here.", "The way from the first page is short.");
    }

    /** An error of the program. */
    public void failed(Context request, Exception failure) {
        show(
                request,
                500,
                "An error of the program, not yours: " + failure.getClass().getSimpleName() + ".",
                "What was saved before is safe. Go back and try again; if it fails again, tell whoever looks after the program"
                        + " what you did.");
    }

    private void show(Context request, int status, String what, String wouldBeRight) {
        String heading = heading(status);
        request.status(status);
        Sheet sheet = Sheet.of(Sheet.Section.NONE, heading)
                .with("Sheet", "Refused")
                .with("Status", String.valueOf(status));
        pages.show(
                request, "error.jte", sheet, new View(status, heading, request.path(), what, wouldBeRight));
    }

    private static String heading(int status) {
        return switch (status) {
            case 403 -> "Not from this page";
            case 404 -> "Nothing here";
            case 405 -> "Not that way";
            case 413 -> "Too much at once";
            case 422 -> "Not quite";
            default -> status >= 500 ? "That did not work" : "Not understood";
        };
    }
}
