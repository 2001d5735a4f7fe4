package gudgeon.app.document;

import gudgeon.core.engine.Engine;
import gudgeon.core.planning.Blocked;
import java.util.List;

/** Why there is no plan, and what would make one, in plain words. */
public final class BlockedWords {
    private final Names names;

    public BlockedWords(Engine engine) {
        this.names = new Names(engine);
    }

    /** One sentence for each reason, most telling first. */
    public List<String> reasons(Blocked blocked) {
        return blocked.reasons().stream().map(this::reason).toList();
    }

    /** One reason as a sentence. */
    public String reason(Blocked.Reason reason) {
        String about = listed(reason.about());
        return switch (reason.kind()) {
            case TOO_HEAVY ->
                "Too heavy: " + about + ", at least " + Figures.mass(reason.massKilograms()) + " in one lift."
                        + would(reason, " It can be lifted with: ");
            case LICENSED ->
                "Only licensed practice may undo: " + about + "." + would(reason, " It goes without when these come: ");
            case WILL_NOT_COME ->
                "Will not come, and the file gives no way to cut it: " + about + "."
                        + would(reason, " It goes on when these come: ");
            case WOULD_HANG ->
                "Would hang on something that does not carry it: " + about + "."
                        + would(reason, " It goes on when these are undone: ");
            case LOOSE -> "Would be loose with nothing to carry it: " + about + "." + would(reason, " What helps: ");
            case ORDER -> "These two cannot be brought into an order: " + about + "." + would(reason, " What helps: ");
            case UNDECIDED ->
                "No order was found for this in the time allowed, and it is not proven that there is none: " + about
                        + ". Allow more time for the search." + would(reason, " What helps: ");
            case NO_WAY ->
                "Nothing in the engine file lets this be done: " + about + "."
                        + would(reason, " What stands in the way: ");
        };
    }

    private String would(Blocked.Reason reason, String lead) {
        return reason.unblockedBy().isEmpty() ? "" : lead + listed(reason.unblockedBy()) + ".";
    }

    private String listed(List<String> ids) {
        return Figures.list(Names.gathered(ids.stream().map(names::any).toList()), 6);
    }
}
