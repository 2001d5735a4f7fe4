package gudgeon.app.document;

import gudgeon.core.engine.Engine;
import gudgeon.core.planning.StripRequest;
import java.util.ArrayList;
import java.util.List;

/** What a strip is for, in a few words. */
public final class TargetWords {
    private TargetWords() {}

    /** "Strip: cylinder head off, compressor aside, to measure the bore". */
    public static String of(Engine engine, StripRequest.Target target) {
        Names names = new Names(engine);
        List<String> words = new ArrayList<>();
        if (!target.off().isEmpty()) {
            words.add(Figures.list(names.parts(target.off()), 4) + " off");
        }
        if (!target.aside().isEmpty()) {
            words.add(Figures.list(names.parts(target.aside()), 4) + " aside");
        }
        if (!target.open().isEmpty()) {
            words.add(Figures.list(target.open().stream().map(names::any).toList(), 4) + " open");
        }
        if (!target.measure().isEmpty()) {
            words.add("to measure "
                    + Figures.list(target.measure().stream().map(names::any).toList(), 4));
        }
        return "Strip: " + String.join(", ", words);
    }
}
