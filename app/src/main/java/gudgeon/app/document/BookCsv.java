package gudgeon.app.document;

import gudgeon.core.book.JobState;
import gudgeon.core.engine.Engine;
import java.util.List;

/** A book for a spreadsheet: one row for each entry, in order. Fields as in {@link OrderCsv}. Source: [RFC4180]. */
public final class BookCsv {
    private BookCsv() {}

    /** The whole file; what was taken back has "no" under "counts". */
    public static String of(Engine engine, List<JobState.Told> history) {
        EntryWords words = new EntryWords(engine);
        StringBuilder out = new StringBuilder();
        OrderCsv.row(out, List.of("number", "at", "by", "what", "counts", "id"));
        for (JobState.Told told : history) {
            OrderCsv.row(
                    out,
                    List.of(
                            String.valueOf(told.entry().seq()),
                            told.entry().stamp().at().toString(),
                            told.entry().stamp().by(),
                            words.of(told.entry()),
                            told.counts() ? "yes" : "no",
                            told.entry().id().toString()));
        }
        return out.toString();
    }
}
