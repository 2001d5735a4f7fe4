package gudgeon.app.cli;

import java.util.Locale;

/** What can be asked about a job. */
enum JobQuestion {
    LIST("Lists all jobs: where each is, what is next, what it waits for."),
    SHOW("Tells where a job is, what hangs on the key, what is next."),
    PLAN("Tells what is left to undo, from the present state, with proof."),
    BUILD("Tells the way back from what was really undone, and how far it is."),
    ORDER("Lists what must be bought for what was undone, is left to undo, and was spoilt."),
    TOOLS("Tells what the steps of the next hour and a half need, and what of it is not there."),
    MEASURE("Tells what is left to measure, by instrument, and what was read comes to."),
    PLACES("Tells where every fastener and part is."),
    LEDGER("Tells what must balance before the engine is closed, and what is missing."),
    CLOSE("Closes the engine up, when everything balances."),
    BOOK("Tells the whole story in order; what was withdrawn is struck through."),
    ENGINE("Prints the engine file as corrected; save it as your own.");

    private final String header;

    JobQuestion(String header) {
        this.header = header;
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    String header() {
        return header;
    }
}
