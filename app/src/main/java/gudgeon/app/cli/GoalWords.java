package gudgeon.app.cli;

import gudgeon.app.document.Figures;
import gudgeon.app.document.Names;
import gudgeon.core.engine.Engine;
import gudgeon.core.planning.StripRequest;
import java.util.ArrayList;
import java.util.List;

/** What is to be reached, as the head of an answer. */
final class GoalWords {
    private static final int MOST_NAMED = 4;

    private GoalWords() {}

    /** "cylinder head off, compressor aside". */
    static String of(Engine engine, StripRequest.Target target) {
        Names names = new Names(engine);
        List<String> words = new ArrayList<>();
        add(words, "", names.parts(target.off()), " off");
        add(words, "", names.parts(target.aside()), " aside");
        add(words, "", target.open().stream().map(names::any).toList(), " undone");
        add(words, "to measure ", target.measure().stream().map(names::any).toList(), "");
        return String.join(", ", words);
    }

    private static void add(List<String> words, String before, List<String> named, String after) {
        if (!named.isEmpty()) {
            words.add(before + Figures.list(named, MOST_NAMED) + after);
        }
    }
}
