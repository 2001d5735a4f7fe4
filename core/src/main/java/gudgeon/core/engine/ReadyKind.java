package gudgeon.core.engine;

/** Kinds of ready operation. */
public enum ReadyKind {
    RECORD("record"),
    MAKE_SAFE("make safe"),
    DRAIN("drain"),
    SUPPORT("support"),
    STRAP("strap"),
    PIN("pin"),
    HOLDING_TOOL("holding tool"),
    CRACK_LOOSE("crack loose");

    private final String word;

    ReadyKind(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
