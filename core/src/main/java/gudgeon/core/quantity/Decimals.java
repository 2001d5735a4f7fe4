package gudgeon.core.quantity;

import java.math.BigDecimal;

/** Plain decimal text for a number, without exponent and without trailing zeros. */
final class Decimals {
    private Decimals() {}

    static String plain(double value) {
        BigDecimal decimal = BigDecimal.valueOf(value).stripTrailingZeros();
        return decimal.toPlainString();
    }
}
