package gudgeon.core.engine;

/**
 * A way of lifting that a person may have.
 *
 * @param name alone, helper, hoist
 * @param limitKilograms the heaviest set of pieces it moves
 * @param seconds time of one lift
 * @param posture how the load is held: close to the body, reached over ...; empty when not said
 */
public record LiftingWay(String name, double limitKilograms, long seconds, String posture) {}
