package gudgeon.core.book;

import java.util.List;

/**
 * What to try on a fastener that gives trouble, gentlest first. Common practice, from memory; the minutes are typical and
 * nobody's measurement. The words of a rung belong to the fronts of the program; here are ids, times and caution ids.
 *
 * @param kind the trouble
 * @param rungs in the order in which they are tried
 */
public record RescueLadder(Fault.Kind kind, List<Rung> rungs) {
    public RescueLadder {
        rungs = List.copyOf(rungs);
    }

    /**
     * One thing to try.
     *
     * @param id stable name of the rung
     * @param minutes typical working time
     * @param waitMinutes typical time to wait before going on; 0 when none
     * @param cautions caution ids, to be read before the action
     * @param last whether it destroys the fastener or may harm the thread, so that nothing gentler is left
     */
    public record Rung(String id, int minutes, int waitMinutes, List<String> cautions, boolean last) {
        public Rung {
            cautions = List.copyOf(cautions);
        }
    }

    /** The ladder for a trouble. */
    public static RescueLadder of(Fault.Kind kind) {
        return new RescueLadder(
                kind,
                switch (kind) {
                    case SEIZED -> List.of(CLEAN, SOAK, SHOCK, TIGHTEN_FIRST, HEAT, WORK_TO_AND_FRO, SPLIT, DRILL);
                    case ROUNDED -> List.of(CLEAN, TAP_ON, FILE_FLATS, GRIP, WELD_NUT, SPLIT, DRILL);
                    case SNAPPED -> List.of(SOAK, GRIP_STUB, LEFT_HAND_BIT, WELD_NUT, DRILL);
                    case STRIPPED -> List.of(PULL_WHILE_TURNING, SPLIT, DRILL, NEW_THREAD);
                    case MISSING -> List.of(LOOK_FOR_IT, NEW_FASTENER);
                });
    }

    private static final Rung CLEAN = rung("clean", 5, 0);
    private static final Rung SOAK = rung("soak", 3, 720);
    private static final Rung SHOCK = rung("shock", 5, 0, "impact-tools");
    private static final Rung TIGHTEN_FIRST = rung("tighten-first", 3, 0);
    private static final Rung HEAT = rung("heat", 15, 0, "petrol-vapour", "seals-overheated");
    private static final Rung WORK_TO_AND_FRO = rung("to-and-fro", 10, 0);
    private static final Rung TAP_ON = rung("tap-on", 5, 0, "impact-tools");
    private static final Rung FILE_FLATS = rung("file-flats", 15, 0);
    private static final Rung GRIP = rung("grip", 5, 0);
    private static final Rung GRIP_STUB = rung("grip-stub", 10, 0);
    private static final Rung LEFT_HAND_BIT = rung("left-hand-bit", 30, 0, "impact-tools");
    private static final Rung WELD_NUT = rung("weld-nut", 30, 0, "petrol-vapour", "seals-overheated");
    private static final Rung PULL_WHILE_TURNING = rung("pull-while-turning", 5, 0);
    private static final Rung SPLIT = new Rung("split", 15, 0, List.of("impact-tools"), true);
    private static final Rung DRILL = new Rung("drill", 60, 0, List.of("impact-tools"), true);
    private static final Rung NEW_THREAD = new Rung("new-thread", 40, 0, List.of("impact-tools"), true);
    private static final Rung LOOK_FOR_IT = rung("look-for-it", 15, 0);
    private static final Rung NEW_FASTENER = rung("new-fastener", 5, 0);

    private static Rung rung(String id, int minutes, int wait, String... cautions) {
        return new Rung(id, minutes, wait, List.of(cautions), false);
    }

    /** A rung by its id, in any ladder; empty when the words are the owner's own. */
    public static java.util.Optional<Rung> find(String id) {
        for (Fault.Kind kind : Fault.Kind.values()) {
            for (Rung rung : of(kind).rungs()) {
                if (rung.id().equals(id)) {
                    return java.util.Optional.of(rung);
                }
            }
        }
        return java.util.Optional.empty();
    }
}
