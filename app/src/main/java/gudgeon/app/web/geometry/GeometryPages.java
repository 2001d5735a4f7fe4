package gudgeon.app.web.geometry;

import gudgeon.app.web.page.Form;
import gudgeon.app.web.page.Pages;
import gudgeon.app.web.page.Refusal;
import gudgeon.app.web.page.Sheet;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;

/** Compression ratio, teeth of a timing drive and cranking pressure, each a form that answers itself. */
public final class GeometryPages {
    /** Where they are. */
    public static final String PATH = "/geometry";

    private final Pages pages;

    public GeometryPages(Pages pages) {
        this.pages = pages;
    }

    /** Puts the page under its path. */
    public void route(RoutesConfig routes) {
        routes.get(PATH, this::show);
    }

    private void show(Context request) {
        Form form = Form.empty();
        request.queryParamMap().forEach((name, values) -> {
            if (!values.isEmpty()) {
                if (values.getFirst().length() > Form.LINE) {
                    throw Refusal.wrong("That is too long for a number.", "A number and a unit, like 86 mm.");
                }
                form.with(name, values.getFirst());
            }
        });
        String asked = Optional.ofNullable(request.queryParam("of")).orElse("");
        GeometryView view = GeometryView.of(asked, form);
        Sheet sheet = Sheet.of(Sheet.Section.NONE, "Shape and timing").with("Sheet", "Shape and timing");
        if (form.sound()) {
            pages.show(request, "geometry/geometry.jte", sheet, view);
        } else {
            pages.showRefused(request, "geometry/geometry.jte", sheet, view);
        }
    }
}
