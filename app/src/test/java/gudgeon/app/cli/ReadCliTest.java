package gudgeon.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Readings of a job from the command line. Facts: the shipped Wren. */
class ReadCliTest {
    @TempDir
    private Path folder;

    private Typed run(String... words) {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--store", folder.resolve("books.sqlite").toString()));
        return Typed.run(all.toArray(String[]::new));
    }

    private String done(String... words) {
        Typed typed = run(words);
        assertThat(typed.exit()).as("%s: %s", List.of(words), typed.err()).isEqualTo(Exit.DONE);
        return typed.out();
    }

    @Test
    void readTakenBackRenewedAndMovedToAnotherJob() throws IOException {
        done("job", "new", "wren-160", "--reach", "piston", "--as", "Mower");
        assertThat(done(
                        "read",
                        "bore",
                        "65.150mm",
                        "--place",
                        "8 mm, thrust",
                        "--with",
                        "digital micrometer",
                        "--at",
                        "18°C"))
                .contains("Beyond the limit", "5 places left");
        assertThat(done("job", "measure", "--json")).contains("\"standing\" : \"beyond\"", "\"uncleaned\"");
        done("undo");
        assertThat(done("job", "measure", "--json")).doesNotContain("\"standing\" : \"beyond\"");
        done("read", "bore", "65.150mm", "--place", "8 mm, thrust", "--with", "digital micrometer");
        done("tell", "renewed", "part=barrel", "spec=barrel");
        assertThat(done("job", "measure", "--json"))
                .as("what was read of the old barrel does not judge the new one")
                .doesNotContain("\"standing\" : \"beyond\"");
        done("read", "bore", "65.010mm", "65.011mm", "--place", "8 mm, thrust", "--with", "digital micrometer");
        Path csv = folder.resolve("readings.csv");
        done("job", "measure", "--csv", csv.toString());
        assertThat(Files.readString(csv)).contains("bore,\"8 mm, thrust\",65.011,digital micrometer");
        Path pdf = folder.resolve("sheet.pdf");
        done("job", "measure", "--pdf", pdf.toString());
        assertThat(Files.readAllBytes(pdf)).startsWith('%', 'P', 'D', 'F').hasSizeGreaterThan(5_000);
        assertThat(done("read", "--csv", csv.toString())).contains("Read: ");
    }

    @Test
    void whatCannotBeIsRefusedAndNothingIsWritten() throws IOException {
        done("job", "new", "wren-160", "--reach", "piston", "--as", "Mower");
        assertThat(run("read", "boar", "65mm").err()).contains("boar", "not known");
        assertThat(run("read", "bore", "65").err()).contains("unit");
        assertThat(run("read", "bore", "65mm").err()).contains("8 mm, thrust");
        assertThat(run("read", "bore", "65mm", "--place", "8 mm, thrust", "--with", "ruler of mine")
                        .exit())
                .isEqualTo(Exit.INPUT);
        assertThat(run("read", "bore").exit()).isEqualTo(Exit.USAGE);
        assertThat(done(
                        "tell",
                        "instrument described",
                        "instrument=my gauge",
                        "resolution_mm=0.001",
                        "maximumError_mm=0.003"))
                .contains("Instrument: my gauge");
        assertThat(done("read", "bore", "65.01mm", "--place", "8 mm, thrust", "--with", "my gauge"))
                .contains("Within the limit");
        assertThat(run("tell", "edition kept", "year=2003").exit()).isEqualTo(Exit.INPUT);
        assertThat(done("tell", "cleaned", "part=barrel", "how=hot soapy water", "clothWhite=yes", "passagesClear=yes"))
                .contains("Cleaned");
        assertThat(done("job", "book")).contains("Read: cylinder bore, 8 mm, thrust");
    }
}
