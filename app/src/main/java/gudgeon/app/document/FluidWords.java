package gudgeon.app.document;

import gudgeon.core.engine.Engine;
import gudgeon.core.planning.Spills.Loss;

/** Words about what runs out. */
public final class FluidWords {
    /** A pan is taken this much larger than what runs into it (common practice: it must be carried). */
    private static final double ROOM = 1.25;

    /** Less than this is a matter for a rag. */
    private static final double RAG_LITRES = 0.15;

    private FluidWords() {}

    /** "About 5.1 l run out: a pan for 7 l under it; about 0.1 l stays in". */
    public static String runsOut(Engine engine, Loss loss) {
        String what = engine.circuit(loss.circuit()).name();
        if (loss.caught()) {
            return what + ": about " + litres(loss.litres()) + " runs out; a pan for "
                    + litres(Math.max(1, Math.ceil(loss.litres() * ROOM))) + " under it"
                    + (loss.left_litres() >= 0.05 ? "; about " + litres(loss.left_litres()) + " stays in" : "");
        }
        return what + ": about " + litres(loss.litres()) + " spills here; "
                + (loss.litres() < RAG_LITRES ? "a rag under it" : "a tray and rags under it");
    }

    /** What to do with what was drained, before any place is named. Common practice. */
    public static final String WASTE = "Used oil, coolant and fuel each in a closed can of its own, marked, never mixed, to the"
            + " collection point; local rules come first.";

    /** "Coolant: 5.2 l to the marked can"; what was not measured or not told says so. */
    public static String gone(String circuit, String to, double litres, int unmeasured) {
        String amount = litres > 0 ? litres(litres) + (unmeasured > 0 ? " and more, not measured" : "") : "not measured";
        return circuit + ": " + amount + (to.isEmpty() ? ", nobody said where it went" : ", to: " + to);
    }

    private static String litres(double litres) {
        return litres < 0.1 ? Math.max(1, Math.round(litres * 100)) * 10 + " ml" : Figures.volume(litres);
    }
}
