package gudgeon.app.document;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.core.ordering.OrderList;
import org.junit.jupiter.api.Test;

/** Source of the quoting: RFC 4180. */
class OrderCsvTest {
    @Test
    void quotesOnlyWhatMustBeQuoted() {
        assertThat(OrderCsv.field("plain")).isEqualTo("plain");
        assertThat(OrderCsv.field("a, b")).isEqualTo("\"a, b\"");
        assertThat(OrderCsv.field("3/4\" hose")).isEqualTo("\"3/4\"\" hose\"");
        assertThat(OrderCsv.field("two\r\nlines")).isEqualTo("\"two\r\nlines\"");
    }

    @Test
    void aFieldIsNeverAFormula() {
        assertThat(OrderCsv.field("=1+1")).isEqualTo("'=1+1");
        assertThat(OrderCsv.field("@x")).isEqualTo("'@x");
        assertThat(OrderCsv.field("-5, +5")).isEqualTo("\"'-5, +5\"");
    }

    @Test
    void oneRowForEachLineAndEveryRowEndsWithCrLf() {
        Shipped wren = Shipped.plan("wren-160", "barrel");
        OrderList list = OrderList.of(wren.engine(), wren.plan());

        String csv = OrderCsv.of(wren.engine(), list);

        assertThat(csv.split("\r\n", -1)).hasSize(list.lines().size() + 2);
        assertThat(csv)
                .startsWith("section,amount,unit,what,price each,price known,for\r\n")
                .endsWith("\r\n");
        assertThat(csv.replace("\r\n", "")).doesNotContain("\n").doesNotContain("\r");
    }
}
