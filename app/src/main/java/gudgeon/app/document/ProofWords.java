package gudgeon.app.document;

import gudgeon.core.planning.StripPlan;

/** What has been proved about a plan, and what has not. */
public final class ProofWords {
    private ProofWords() {}

    /** What is proved about the set of joints and ready operations. */
    public static String opening(StripPlan.Opening opening) {
        if (opening.proven()) {
            return "No cheaper set of joints and preparations reaches it: proved by "
                    + Figures.count(opening.landmarks().size(), "group") + " of steps of which one cannot be avoided.";
        }
        return "A cheaper set may exist: this one costs " + Figures.time(opening.costSeconds())
                + ", proved is only that none costs less than " + Figures.time(opening.lowerBoundSeconds()) + ".";
    }

    /** What is proved about the order. */
    public static String order(StripPlan.Order order) {
        if (order.proven()) {
            return "No order of these steps has less changeover than the " + Figures.time(order.changeoverSeconds())
                    + " of this one: proved.";
        }
        return "The order has " + Figures.time(order.changeoverSeconds())
                + " of changeover; an order with less may exist, but none below "
                + Figures.time(order.lowerBoundSeconds()) + ".";
    }
}
