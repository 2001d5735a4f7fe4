package gudgeon.app.cli;

import gudgeon.app.desk.StripQuestion.Reply;
import gudgeon.app.document.BlockedWords;


/** Why there is no plan, for a person. */
final class BlockedText {
    private final Screen screen;
    private final Layout layout;

    BlockedText(Screen screen) {
        this.screen = screen;
        this.layout = new Layout(screen);
    }

    void print(Reply.Stuck stuck) {
        layout.heading(stuck.engine().identity().name() + ": "
                + GoalWords.of(stuck.engine(), stuck.request().target()));
        layout.blank();
        layout.line("  " + Ink.DANGER.on(screen, "No plan."));
        for (String reason : new BlockedWords(stuck.engine()).reasons(stuck.blocked())) {
            layout.hanging("  - ", 4, reason);
        }
    }
}
