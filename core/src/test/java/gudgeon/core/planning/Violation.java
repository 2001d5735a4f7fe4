package gudgeon.core.planning;

/**
 * Something wrong with a plan.
 *
 * @param kind the rule that is broken
 * @param step 1-based number of the step; 0 when it is about the plan as a whole
 * @param text what exactly
 */
record Violation(Kind kind, int step, String text) {
    /** The rules. */
    enum Kind {
        WRONG_NUMBER,
        UNKNOWN_OPERATION,
        WRONG_KIND,
        DONE_TWICE,
        WILL_NOT_COME,
        LICENSED,
        NO_ACCESS,
        CIRCUIT_NOT_READY,
        NEED_NOT_DONE,
        HOLD_BROKEN,
        BEFORE_BROKEN,
        ENGINE_STATE,
        NOT_WHOLE_PIECES,
        TOO_HEAVY,
        LIFT_CONDITION,
        WOULD_HANG,
        WRONG_LIFT_DATA,
        LOOSE_PIECE,
        WRONG_PARTS,
        WRONG_ZONE,
        WRONG_TOOLS,
        WRONG_FROM_ZONE,
        WRONG_CHANGEOVER,
        WRONG_SECONDS,
        WRONG_DESTROYS,
        MISSING_CAUTION,
        WRONG_STATE_AFTER,
        TARGET_NOT_REACHED,
        WRONG_CHOSEN,
        WRONG_OPENING,
        WRONG_ORDER_TOTAL,
        WRONG_LIFTS_TOTAL,
        WRONG_TOTAL,
        WRONG_DESTROYED_LIST
    }
}
