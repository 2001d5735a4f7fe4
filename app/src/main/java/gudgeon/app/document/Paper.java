package gudgeon.app.document;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.TimeZone;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;

/** Turns the body of a sheet into a PDF with border and title block on every page. The same body gives the same bytes. */
final class Paper {
    private static final String STYLE = "/gudgeon/paper/sheet.css";
    private static final LocalDate NO_CLOCK = LocalDate.of(2000, 1, 1);

    private Paper() {}

    /** One cell of the title block. */
    record Cell(String label, String text) {}

    /**
     * A PDF.
     *
     * @param title what the file is called in a reader's window
     * @param cells title block from the left; the page number follows by itself
     * @param body markup of the sheet
     */
    static byte[] pdf(String title, List<Cell> cells, Xhtml body) {
        return render(title, document(title, cells, body));
    }

    static String document(String title, List<Cell> cells, Xhtml body) {
        Xhtml page = new Xhtml();
        page.open("div", "titleblock").open("table", "tb").open("tr", "");
        for (Cell cell : cells) {
            page.open("td", "")
                    .text("div", "label", cell.label())
                    .text("div", "value", cell.text())
                    .close();
        }
        page.open("td", "pages").text("div", "label", "Page").open("div", "value");
        page.text("span", "page", "")
                .text(" of ")
                .text("span", "count", "")
                .close()
                .close();
        page.close().close().close();
        return "<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\"><head><title>" + Xhtml.escaped(title)
                + "</title><style>" + style() + "</style></head>\n<body>" + page + body + "</body></html>";
    }

    private static String style() {
        try (InputStream bytes = Paper.class.getResourceAsStream(STYLE)) {
            if (bytes == null) {
                throw new IllegalStateException("the program was built without " + STYLE);
            }
            return new String(bytes.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + STYLE, e);
        }
    }

    private static byte[] render(String title, String xhtml) {
        XRLog.setLoggingEnabled(false);
        PdfRendererBuilder builder = new PdfRendererBuilder();
        for (Typeface face : Typeface.values()) {
            builder.useFont(face::trueType, face.family(), face.weight(), FontStyle.NORMAL, true);
        }
        builder.withHtmlContent(xhtml, null);
        builder.withProducer("Gudgeon");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        builder.toStream(out);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.createPDFWithoutClosing();
            PDDocument document = renderer.getPdfDocument();
            document.setDocumentId(1L);
            document.setDocumentInformation(information(title));
            document.save(out);
            document.close();
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot write the sheet " + title, e);
        }
    }

    private static PDDocumentInformation information(String title) {
        PDDocumentInformation information = new PDDocumentInformation();
        Calendar fixed = new GregorianCalendar(TimeZone.getTimeZone(ZoneOffset.UTC), java.util.Locale.ROOT);
        fixed.setTimeInMillis(NO_CLOCK.atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli());
        information.setTitle(title);
        information.setProducer("Gudgeon");
        information.setCreationDate(fixed);
        information.setModificationDate(fixed);
        return information;
    }

    /** Job or engine, sheet, engine file, date. */
    static List<Cell> cells(gudgeon.core.engine.Engine engine, Issue issue, String sheet) {
        String sha = engine.identity().sha256();
        String file = engine.identity().id() + (sha.isEmpty() ? "" : " " + sha.substring(0, Math.min(8, sha.length())));
        return List.of(
                new Cell(
                        issue.job().isBlank() ? "Engine" : "Job",
                        issue.job().isBlank() ? engine.identity().name() : issue.job()),
                new Cell("Sheet", sheet),
                new Cell("Engine file", file),
                new Cell("Date", issue.date().isBlank() ? "–" : issue.date()));
    }
}
