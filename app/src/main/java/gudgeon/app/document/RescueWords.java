package gudgeon.app.document;

import gudgeon.core.book.Fault;

/** The rungs of the rescue ladder in words. Common practice, from memory. */
public final class RescueWords {
    private RescueWords() {}

    /** What to do on a rung; the owner's own words as they are. */
    public static String rung(String id) {
        return switch (id) {
            case "clean" -> "Brush the head and thread clean, and seat a tight-fitting six-sided socket fully";
            case "soak" -> "Soak the thread with penetrating oil overnight; again in the morning";
            case "shock" -> "Shock it: a few square hammer blows on the head, or short bursts of an impact driver";
            case "tighten-first" -> "Try a few degrees tighter first, then out";
            case "heat" ->
                "Warm the part around it, not the bolt; fuel, oil and rubber well away, extinguisher at hand";
            case "to-and-fro" -> "Work it: a little out, half of that in, oil again, and so on";
            case "tap-on" -> "Tap the next smaller socket onto it";
            case "file-flats" -> "File two flats for an open spanner";
            case "grip" -> "Grip it with locking pliers or a tool that bites the head";
            case "grip-stub" -> "Grip the stub with locking pliers, or lock two nuts on it";
            case "left-hand-bit" -> "Centre-punch, and drill with a left-hand bit: it often winds itself out";
            case "weld-nut" -> "Weld a nut on; its heat helps as well";
            case "pull-while-turning" -> "Pull or prise under the head while turning";
            case "split" -> "Split the nut or cut the head off, and draw the part off the stud";
            case "drill" -> "Drill it out in steps, dead centre; blow no chips into the engine, count the cloths";
            case "new-thread" -> "Cut the hole out and fit a thread insert of the old size";
            case "look-for-it" -> "Look for it: tray, ledges, magnet; nothing turns before it is found";
            case "new-fastener" -> "Put it on the order list and say so in the book";
            default -> id;
        };
    }

    /** How an attempt ended. */
    public static String outcome(Fault.Outcome outcome) {
        return switch (outcome) {
            case NO -> "did not help";
            case OUT -> "out";
            case DRILLED -> "drilled out, look at the hole";
        };
    }
}
