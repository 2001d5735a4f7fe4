package gudgeon.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Measuring on the pages: from the list to a verdict. Facts: the shipped Wren, its limits typical. */
class MeasuringPagesTest extends ServedTest {
    @Test
    void aBoreFromTheFirstReadingToAConfirmedVerdict() throws Exception {
        String job = visitor.open("Measure", "wren-160", "piston");
        assertThat(visitor.get(job + "/measure").text()).contains("Out of reach yet", "Cylinder bore");
        String sheet = job + "/measure/feature/bore";
        assertThat(visitor.get(sheet).text())
                .contains("By the book it cannot be got at yet", "8 mm, thrust", "6 to read");
        Visitor.Page first = read(sheet, "8 mm, thrust", "65.012");
        assertThat(first.text())
                .contains(
                        "Within, provisional", "confirm it from your manual", "Read before it was clean", "5 to read");
        for (String[] place : new String[][] {
            {"8 mm, axial", "65.010"},
            {"24 mm, thrust", "65,009"},
            {"24 mm, axial", "65.008"},
            {"44 mm, thrust", "65.006"}
        }) {
            assertThat(read(sheet, place[0], place[1]).status()).isEqualTo(200);
        }
        Visitor.Page all = read(sheet, "44 mm, axial", "65.006");
        assertThat(all.text()).contains("Taper", "Out-of-round", "+6 µm", "What makes up the uncertainty");
        Visitor.Page clean =
                visitor.fill(sheet, "/measure/cleaned", "white", "yes", "clear", "yes", "how", "hot soapy water");
        assertThat(clean.text()).contains("Cleaning written down", "Read before it was clean");
        Visitor.Page confirmed = visitor.fill(sheet, "/measure/confirmed", "where", "section 4");
        assertThat(confirmed.text()).contains("The limit is confirmed").doesNotContain("Within, provisional");
        assertThat(visitor.get(job + "/measure/readings.csv").body())
                .startsWith("feature,place,reading mm")
                .contains("bore,\"24 mm, thrust\",65.009,");
        assertThat(visitor.get(job + "/measure/sheet.pdf").body()).startsWith("%PDF");
    }

    @Test
    void wrongReadingsSayWhatWouldBeRight() throws Exception {
        String job = visitor.open("Wrong", "wren-160", "piston");
        String sheet = job + "/measure/feature/bore";
        assertThat(read(sheet, "8 mm, thrust", "sixty").status()).isEqualTo(422);
        assertThat(read(sheet, "8 mm, thrust", "65 mil").text()).contains("a thousandth of an inch");
        assertThat(read(sheet, "8 mm, thrust", "65 mil").body()).contains("value=\"65 mil\"");
        assertThat(visitor.get(job + "/measure/feature/nothing").status()).isEqualTo(404);
        Visitor.Page table = visitor.fill(
                job + "/measure",
                "/measure/import",
                "table",
                "feature,place,reading mm\nbore,\"8 mm, thrust\",65.01\nboar,x,1\n");
        assertThat(table.status()).isEqualTo(422);
        assertThat(table.text()).contains("the table:3:", "boar");
        assertThat(visitor.get(job + "/measure/readings.csv").body().lines())
                .as("all lines or none")
                .hasSize(1);
    }

    @Test
    void aFaceByCoordinatesAndAnInstrumentOfOnesOwn() throws Exception {
        String job = visitor.open("Face", "wren-160", "piston");
        Visitor.Page own = visitor.fill(
                job + "/measure",
                "/measure/instrument",
                "name",
                "my dial",
                "figure",
                "0.001",
                "errs",
                "0.003",
                "repeats",
                "0.001");
        assertThat(own.text()).contains("shows 0.001 mm, errs by at most 0.003 mm");
        StringBuilder table = new StringBuilder("feature;place;reading um;instrument\n");
        for (int x = -1; x <= 1; x++) {
            for (int y = -1; y <= 1; y++) {
                table.append("head-flatness;x ")
                        .append(40 * x)
                        .append(", y ")
                        .append(40 * y)
                        .append(';');
                table.append(12 * x * x).append(";my dial\n");
            }
        }
        assertThat(visitor.fill(job + "/measure", "/measure/import", "table", table.toString())
                        .text())
                .contains("Readings taken in");
        Visitor.Page face = visitor.get(job + "/measure/feature/head-flatness");
        assertThat(face.text()).contains("0.012", "Map of the face", "Within, provisional");
        assertThat(face.body()).contains("class=\"high\"", "class=\"low\"");
        assertThat(visitor.fill(job + "/measure", "/measure/edition", "year", "1998")
                        .text())
                .contains("Judged by ISO 14253-1:1998");
    }

    private Visitor.Page read(String sheet, String place, String shown) throws Exception {
        return visitor.fill(
                sheet,
                "/measure/reading",
                "place",
                place,
                "shown",
                shown,
                "instrument",
                "digital micrometer",
                "part",
                "18");
    }
}
