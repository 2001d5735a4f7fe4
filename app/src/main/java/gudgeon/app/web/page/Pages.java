package gudgeon.app.web.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Renders templates; the way from a handler to the screen. */
public final class Pages {
    private static final String LOOK = "gudgeon-look";
    private static final int YEAR_SECONDS = 365 * 24 * 3600;

    private final TemplateEngine templates = TemplateEngine.createPrecompiled(ContentType.Html);
    private final Assets assets;

    public Pages(Assets assets) {
        this.assets = assets;
    }

    /** Shows a template with its view. */
    public void show(Context request, String template, Sheet sheet, Object view) {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("sheet", sheet);
        values.put("visit", visit(request));
        values.put("view", view);
        StringOutput out = new StringOutput();
        templates.render(template, values, out);
        request.html(out.toString());
    }

    /** Shows a template again with what was refused, so that nothing typed is lost. */
    public void showRefused(Context request, String template, Sheet sheet, Object view) {
        request.status(422);
        show(request, template, sheet, view);
    }

    /** After a write: the browser gets another page, so that loading it again writes nothing. */
    public static void goTo(Context request, String path) {
        request.header("Location", local(path)).status(303);
    }

    /** The path itself when it is one of ours, otherwise the first page. */
    public static String local(@Nullable String path) {
        return path != null && path.matches("/([^/\\\\\\p{Cntrl}].*)?") && path.length() < 2000 ? path : "/";
    }

    /** Keeps the chosen colours on this device. */
    public static void keepLook(Context request, Look look) {
        request.cookie(new Cookie(LOOK, look.word(), "/", YEAR_SECONDS, false, true, null, SameSite.STRICT));
    }

    private Visit visit(Context request) {
        String query = request.queryString();
        String here = request.path() + (query == null ? "" : "?" + query);
        return new Visit(Look.of(request.cookie(LOOK)), Gate.tokenOf(request), here, assets.base());
    }
}
