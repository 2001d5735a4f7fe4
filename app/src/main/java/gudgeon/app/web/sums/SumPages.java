package gudgeon.app.web.sums;

import gudgeon.app.desk.Written;
import gudgeon.app.web.page.Form;
import gudgeon.app.web.page.Pages;
import gudgeon.app.web.page.Refusal;
import gudgeon.app.web.page.Sheet;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Optional;

/** Bolts and fits without a job: numbers in, an answer with its reasons out. Nothing is written down. */
public final class SumPages {
    private static final int LONGEST = 4_000;

    private final Pages pages;

    public SumPages(Pages pages) {
        this.pages = pages;
    }

    /** Puts the pages under their paths. */
    public void route(RoutesConfig routes) {
        routes.get(
                "/sums",
                request -> pages.show(
                        request,
                        "sums/sums.jte",
                        Sheet.of(Sheet.Section.SUMS, "Sums at the bench").with("Sheet", "Sums"),
                        new SumListView()));
        routes.get("/sums/{kind}", this::show);
    }

    private void show(Context request) {
        SumKind kind = SumKind.find(request.pathParam("kind"))
                .orElseThrow(() -> new Refusal(404, "There is no such sum.", "Choose one of those under Sums."));
        Form form = Form.empty();
        boolean asked = false;
        for (SumKind.Field field : kind.fields()) {
            String typed = Optional.ofNullable(request.queryParam(field.name())).orElse("");
            form.with(field.name(), typed.substring(0, Math.min(typed.length(), LONGEST)));
            asked |= !typed.isBlank();
        }
        Sheet sheet = Sheet.of(Sheet.Section.SUMS, kind.title()).with("Sheet", kind.title());
        if (!asked) {
            pages.show(request, "sums/sum.jte", sheet, new SumView(kind, form, Optional.empty(), ""));
            return;
        }
        try {
            SumKind.SumResult result = kind.ask(name -> form.typed(name).strip(), written(request));
            pages.show(request, "sums/sum.jte", sheet, new SumView(kind, form, Optional.of(result), ""));
        } catch (IllegalArgumentException e) {
            SumView view = new SumView(kind, form, Optional.empty(), String.valueOf(e.getMessage()));
            pages.showRefused(request, "sums/sum.jte", sheet, view);
        }
    }

    /** Whether the reader's language writes numbers with a decimal comma. */
    static Written written(Context request) {
        String languages =
                Optional.ofNullable(request.header("Accept-Language")).orElse("");
        Locale first =
                Locale.forLanguageTag(languages.replaceFirst("[,;].*", "").strip());
        return new Written(DecimalFormatSymbols.getInstance(first).getDecimalSeparator() == ',');
    }
}
