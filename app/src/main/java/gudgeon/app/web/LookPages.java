package gudgeon.app.web;

import gudgeon.app.web.page.Form;
import gudgeon.app.web.page.Look;
import gudgeon.app.web.page.Pages;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** The choice of colours. */
final class LookPages {
    private LookPages() {}

    static void route(RoutesConfig routes) {
        routes.post("/look", LookPages::choose);
    }

    private static void choose(Context request) {
        Form form = Form.of(request);
        Pages.keepLook(request, Look.of(form.typed("look")));
        Pages.goTo(request, form.typed("back"));
    }
}
