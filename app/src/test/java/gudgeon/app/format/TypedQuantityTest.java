package gudgeon.app.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Units as people write them. Values by hand from the exact inch, pound and standard gravity; NIST SP 811 app. B rounds the same. */
class TypedQuantityTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "24 N·m | 24 | N·m",
                "24Nm | 24 | N·m",
                "24 Nm | 24 | N·m",
                "24 N m | 24 | N·m",
                "24\u00a0N⋅m | 24 | N·m",
                "24\u202fN•m | 24 | N·m",
                "17.7 lbf·ft | 23.99797768 | lbf·ft",
                "17.7 ft-lb | 23.99797768 | lbf·ft",
                "17.7 FT‑LB | 23.99797768 | lbf·ft",
                "212.4 lbf·in | 23.99797768 | lbf·in",
                "2.447 kgf·m | 23.99687255 | kgf·m",
            })
    void oneTorqueInManyWords(String typed, double newtonMetres, String unit) {
        TypedQuantity torque = TypedQuantity.read("torque", typed, QuantityKind.TORQUE, false);
        assertThat(torque.value()).isCloseTo(newtonMetres, within(1e-7));
        assertThat(torque.unit()).isEqualTo(unit);
        double number = Double.parseDouble(typed.replaceAll("[^0-9.].*", ""));
        assertThat(torque.like(torque.value(), 6)).isEqualTo(plain(number) + " " + unit);
    }

    private static String plain(double number) {
        return new java.math.BigDecimal(Double.toString(number))
                .stripTrailingZeros()
                .toPlainString();
    }

    @Test
    void aThousandthOfAnInch() {
        double thou =
                TypedQuantity.read("gap", "1 thou", QuantityKind.LENGTH, false).value();
        assertThat(thou).isEqualTo(0.0254);
        assertThat(TypedQuantity.read("gap", "0.001\"", QuantityKind.LENGTH, false)
                        .value())
                .isEqualTo(thou);
        assertThat(TypedQuantity.read("gap", "0.001 in", QuantityKind.LENGTH, false)
                        .value())
                .isEqualTo(thou);
        assertThat(TypedQuantity.read("gap", "25.4 µm", QuantityKind.LENGTH, false)
                        .value())
                .isEqualTo(thou);
        assertThat(TypedQuantity.read("gap", "25.4 μm", QuantityKind.LENGTH, false)
                        .value())
                .isEqualTo(thou);
        assertThat(TypedQuantity.read("gap", "25.4um", QuantityKind.LENGTH, false)
                        .value())
                .isEqualTo(thou);
    }

    @Test
    void aDecimalCommaWhereItIsOnesOwn() {
        assertThat(TypedQuantity.read("torque", "24,5 Nm", QuantityKind.TORQUE, true)
                        .value())
                .isEqualTo(24.5);
        assertThat(TypedQuantity.read("torque", "24.5 Nm", QuantityKind.TORQUE, true)
                        .value())
                .isEqualTo(24.5);
        assertThatThrownBy(() -> TypedQuantity.read("torque", "24,5 Nm", QuantityKind.TORQUE, false))
                .hasMessage("torque: a decimal comma in '24,5 Nm'; write 24.5 Nm");
        assertThatThrownBy(() -> TypedQuantity.read("torque", "1,234,5 Nm", QuantityKind.TORQUE, true))
                .hasMessageContaining("write a torque with its unit");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "LENGTH | 3 mil | thou",
                "TORQUE | 18 pounds | lbf·ft or lbf·in",
                "TORQUE | 18 pound | lbf·ft or lbf·in",
                "TORQUE | 18 lb | lbf·ft, lbf·in",
                "MASS | 2 pounds | write lb",
                "VOLUME | 8 pints | of the UK or of the US",
                "VOLUME | 1 pint | of the UK or of the US",
                "TORQUE | 2.4 kgm | kgf·m",
                "TORQUE | 24 | has no unit",
                "TORQUE | 24 mm | is a length where a torque belongs",
            })
    void whatMeansTwoThingsIsAsked(QuantityKind kind, String typed, String asked) {
        assertThatThrownBy(() -> TypedQuantity.read("it", typed, kind, false))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(asked);
    }

    @Test
    void aPintThatSaysWhose() {
        assertThat(TypedQuantity.read("oil", "1 UK pint", QuantityKind.VOLUME, false)
                        .value())
                .isCloseTo(0.56826125, within(1e-12));
        assertThat(TypedQuantity.read("oil", "1 US pint", QuantityKind.VOLUME, false)
                        .value())
                .isCloseTo(0.473176473, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(strings = {"5-25 N·m", "5 to 25 N·m", "5 N·m to 25 N·m", "5–25Nm", "5 Nm - 25 Nm", "5..25 N·m"})
    void ranges(String typed) {
        TypedQuantity.Span span = TypedQuantity.readSpan("scale", typed, QuantityKind.TORQUE, false);
        assertThat(span.least().value()).isEqualTo(5);
        assertThat(span.most().value()).isEqualTo(25);
    }

    @Test
    void rangesThatAreNone() {
        assertThat(TypedQuantity.readSpan("gap", "0.15 mm to 0.25 mm", QuantityKind.LENGTH, false)
                        .most()
                        .value())
                .isEqualTo(0.25);
        assertThatThrownBy(() -> TypedQuantity.readSpan("scale", "25-5 N·m", QuantityKind.TORQUE, false))
                .hasMessageContaining("swap");
        assertThatThrownBy(() -> TypedQuantity.readSpan("scale", "25 N·m", QuantityKind.TORQUE, false))
                .hasMessageContaining("no range");
        assertThatThrownBy(() -> TypedQuantity.readSpan("scale", "5-25", QuantityKind.TORQUE, false))
                .hasMessageContaining("has no unit");
    }
}
