package gudgeon.core.planning;


/** The answer to a {@link StripRequest}: a plan, or why there is none. */
public sealed interface StripAnswer permits StripPlan, Blocked {}
