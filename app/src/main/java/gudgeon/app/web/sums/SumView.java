package gudgeon.app.web.sums;

import gudgeon.app.document.AnswerRow;
import gudgeon.app.document.Names;
import gudgeon.app.web.page.Form;
import gudgeon.app.web.picture.LadderPicture;
import java.util.List;
import java.util.Optional;

/** A sum: its form with what was typed, and what comes of it. */
public final class SumView {
    private final SumKind kind;
    private final Form form;
    private final Optional<SumKind.SumResult> result;
    private final String wrong;

    SumView(SumKind kind, Form form, Optional<SumKind.SumResult> result, String wrong) {
        this.kind = kind;
        this.form = form;
        this.result = result;
        this.wrong = wrong;
    }

    /** A field of the form. */
    public record Field(String name, String label, String example, boolean lines, String typed) {}

    public String title() {
        return kind.title();
    }

    public String lead() {
        return Names.capital(kind.lead());
    }

    public String path() {
        return "/sums/" + kind.word();
    }

    public List<Field> fields() {
        return kind.fields().stream()
                .map(field -> new Field(
                        field.name(), field.label(), field.example(), field.lines(), form.typed(field.name())))
                .toList();
    }

    /** What could not be read; empty when nothing is wrong. */
    public String wrong() {
        return wrong;
    }

    public boolean answered() {
        return result.isPresent();
    }

    /** The answer, label by label. */
    public List<AnswerRow> rows() {
        return result.stream()
                .flatMap(found -> found.rows().stream())
                .filter(row -> !row.label().isEmpty())
                .toList();
    }

    /** What is to be said besides. */
    public List<String> remarks() {
        return result.stream()
                .flatMap(found -> found.rows().stream())
                .filter(row -> row.label().isEmpty())
                .map(row -> Names.capital(row.text()))
                .toList();
    }

    public LadderPicture ladder() {
        return result.map(SumKind.SumResult::ladder).orElse(LadderPicture.NONE);
    }
}
