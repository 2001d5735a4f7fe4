package gudgeon.core.engine;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An operation that undoes no joint but must be done before one may be: make safe, drain, support, strap, crack loose ...
 *
 * @param id ASCII, unique among parts, joints and ready operations
 * @param name what is done, as an instruction without its object's history ("Disconnect the battery, earthed lead first")
 * @param kind see {@link ReadyKind}
 * @param seconds time it takes
 * @param zone zone id
 * @param tools tool names
 * @param access conditions; without a joint, a part literal means "moved"
 * @param needs ready operations that must be done first
 * @param joint the joint that is cracked loose, or whose plug comes out and goes back; empty for the other kinds
 * @param effect what it does beside allowing joints
 */
public record Ready(
        String id,
        String name,
        ReadyKind kind,
        long seconds,
        String zone,
        List<String> tools,
        Condition access,
        List<String> needs,
        Optional<String> joint,
        Effect effect) {
    public Ready {
        tools = List.copyOf(tools);
        needs = List.copyOf(needs);
    }

    /**
     * What a ready operation does.
     *
     * @param height_mm height of a drain above the file's zero; empty otherwise
     * @param carries parts that a support carries, so that their pieces are not loose
     * @param hold what must be intact while it is done (crack loose)
     * @param engineState whether the engine must be cold or warm for it
     * @param restore what is done on the way back ("Take the pins out"); empty when nothing is
     * @param spends what it uses up (a drain plug's washer)
     * @param cautions caution ids
     * @param note a word to the person doing it; empty when none
     */
    public record Effect(
            OptionalDouble height_mm,
            List<String> carries,
            Joint.Hold hold,
            Joint.EngineState engineState,
            String restore,
            List<Spend> spends,
            List<String> cautions,
            String note) {
        public Effect {
            carries = List.copyOf(carries);
            spends = List.copyOf(spends);
            cautions = List.copyOf(cautions);
        }
    }
}
