package gudgeon.core.engine;

/**
 * Kinds of fastener in the trade's words, with the typical time to undo one (common practice, typical; the owner's record
 * replaces it) and whether it carries a thread.
 */
public enum FastenerKind {
    BOLT("bolt", 50, true),
    SCREW("screw", 30, true),
    STUD_AND_NUT("stud and nut", 60, true),
    NUT("nut", 45, true),
    BANJO_BOLT("banjo bolt", 75, true),
    UNION_NUT("union nut", 60, true),
    PLUG("plug", 60, true),
    SENSOR("sensor", 75, true),
    GLOW_PLUG("glow plug", 150, true),
    SPARK_PLUG("spark plug", 90, true),
    WORM_CLIP("worm clip", 45, false),
    SPRING_CLIP("spring clip", 40, false),
    CLIP("clip", 15, false),
    CIRCLIP("circlip", 60, false),
    COLLETS("collets", 120, false),
    PIN("pin", 45, false),
    CABLE_TIE("cable tie", 15, false);

    private final String word;
    private final int seconds;
    private final boolean threaded;

    FastenerKind(String word, int seconds, boolean threaded) {
        this.word = word;
        this.seconds = seconds;
        this.threaded = threaded;
    }

    public String word() {
        return word;
    }

    public int seconds() {
        return seconds;
    }

    public boolean threaded() {
        return threaded;
    }
}
