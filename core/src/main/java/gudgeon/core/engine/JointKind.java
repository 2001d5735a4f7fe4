package gudgeon.core.engine;

/**
 * The kind of fastening, in the trade's words. {@code word} is how the engine file spells it; {@code seconds} the typical
 * time to undo one such joint when it has no fasteners of its own (common practice, typical).
 */
public enum JointKind {
    BOLTED("bolted", 0),
    HOSE_CLIP("hose clip", 120),
    UNION_NUT("union nut", 120),
    BANJO("banjo", 150),
    PRESS_FIT("press fit", 600),
    SNAP("snap", 30),
    SEALANT("sealant", 300),
    PLUG("plug", 45),
    CLAMP("clamp", 120),
    SLIDE("slide", 30),
    BELT("belt", 120);

    private final String word;
    private final int seconds;

    JointKind(String word, int seconds) {
        this.word = word;
        this.seconds = seconds;
    }

    public String word() {
        return word;
    }

    public int seconds() {
        return seconds;
    }
}
