package gudgeon.app.desk;

import gudgeon.core.ordering.OrderList;

/**
 * What must be bought for that strip and the way back?
 *
 * @param strip the strip that was planned
 */
public record OrderQuestion(StripQuestion.Reply.Planned strip) {
    /** Everything single-use that the plan destroys, fluids by volume, compounds. */
    public OrderList ask() {
        return OrderList.of(strip.engine(), strip.plan());
    }
}
