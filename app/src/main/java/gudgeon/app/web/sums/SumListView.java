package gudgeon.app.web.sums;

import java.util.Arrays;
import java.util.List;

/** All sums there are. */
public final class SumListView {
    /** A sum to choose. */
    public record Card(String title, String lead, String href) {}

    public List<Card> cards() {
        return Arrays.stream(SumKind.values())
                .map(kind -> new Card(kind.title(), kind.lead(), "/sums/" + kind.word()))
                .toList();
    }
}
