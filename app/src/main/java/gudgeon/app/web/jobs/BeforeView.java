package gudgeon.app.web.jobs;

import gudgeon.app.document.ToldCautions;
import gudgeon.app.format.Caution;
import java.util.ArrayList;
import java.util.List;

/**
 * The cautions of a step at the bench, before its action (decision 0020).
 *
 * @param written dangers met here first, written out
 * @param titles all others, their texts behind one tap; dangers first
 */
public record BeforeView(List<Caution> written, List<Caution> titles) {
    public BeforeView {
        written = List.copyOf(written);
        titles = List.copyOf(titles);
    }

    /** As fully as the step tells them. */
    public static BeforeView of(ToldCautions.Told told) {
        List<Caution> titles = new ArrayList<>();
        told.recent().forEach(recent -> titles.add(recent.caution()));
        titles.addAll(told.cautions());
        titles.addAll(told.along());
        return new BeforeView(told.dangers(), titles);
    }

    /** Whether a danger is among those behind the tap. */
    public boolean dangerBehind() {
        return titles.stream().anyMatch(BeforeView::danger);
    }

    public static boolean danger(Caution caution) {
        return caution.level() == Caution.Level.DANGER;
    }
}
