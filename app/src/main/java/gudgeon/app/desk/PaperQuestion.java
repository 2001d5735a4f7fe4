package gudgeon.app.desk;

import gudgeon.app.document.BuildSheet;
import gudgeon.app.document.Issue;
import gudgeon.app.document.OrderSheet;
import gudgeon.app.document.StripCard;
import gudgeon.app.document.TargetWords;
import gudgeon.app.format.Cautions;
import gudgeon.core.engine.Engine;
import gudgeon.core.ordering.OrderList;

/**
 * How is it on paper? Every answer is a PDF.
 *
 * @param issue what the title block says of the sheet's origin
 */
public record PaperQuestion(Issue issue) {
    /** The strip, to tick off. */
    public byte[] stripCard(StripQuestion.Reply.Planned strip) {
        return StripCard.pdf(strip.engine(), strip.plan(), strip.request().target(), Cautions.catalogue(), issue);
    }

    /** The way back, to tick off. */
    public byte[] buildSheet(BuildQuestion.Reply.Planned build) {
        StripQuestion.Reply.Planned strip = build.strip();
        return BuildSheet.pdf(strip.engine(), strip.plan(), build.plan(), subject(strip), Cautions.catalogue(), issue);
    }

    /** The order list, to tick off. */
    public byte[] orderSheet(StripQuestion.Reply.Planned strip, OrderList list) {
        Engine engine = strip.engine();
        return OrderSheet.pdf(engine, list, subject(strip), issue);
    }

    private static String subject(StripQuestion.Reply.Planned strip) {
        return TargetWords.of(strip.engine(), strip.request().target());
    }
}
