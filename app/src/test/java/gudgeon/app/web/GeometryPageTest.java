package gudgeon.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Shape and timing as a page: row C-CR-2 of the geometry table (computed outside), teeth by hand. */
class GeometryPageTest extends ServedTest {
    @Test
    void theRatioIsAnswered() throws Exception {
        Visitor.Page page = visitor.get("/geometry?of=ratio&bore=86+mm&stroke=86mm&chamber=45+ml&gasket=1.2+mm"
                + "&hole=87.5+mm&deck=0.3mm&dish=5ml&skim=0.2mm");
        assertThat(page.status()).isEqualTo(200);
        assertThat(page.text()).contains("9.47 ±", "58.96 cm³", "Ratio after the skim", "chamber");
    }

    @Test
    void theMarksAreAnsweredWithWhatMustBeDoneByHand() throws Exception {
        assertThat(visitor.get("/geometry?of=teeth&crank=22&cam=44&belt=137").text())
                .contains("16.36 degrees", "274 turns", "by hand");
    }

    @Test
    void whatCannotBeReadIsToldBesideItsField() throws Exception {
        Visitor.Page page = visitor.get("/geometry?of=ratio&bore=86&stroke=86mm&chamber=45+ml&gasket=1.2+mm");
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.text()).contains("has no unit", "for instance 12 mm");
        assertThat(visitor.get("/geometry?of=cranking&ratio=9.5&throw=86mm&rod=30mm&closes=49").text())
                .contains("too short");
        assertThat(visitor.get("/geometry?of=teeth&crank=22&cam=0").text()).contains("from 1 to 500");
        assertThat(visitor.get("/geometry").status()).isEqualTo(200);
    }
}
