package gudgeon.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.app.photo.Darkroom;
import gudgeon.app.photo.Snapshot;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** A photo from the phone into the book, and shown where it is needed: at the strip, on the way back, in the book. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PhotoPagesTest {
    private static final Pattern PICTURE = Pattern.compile("<img src=\"(/jobs/[^\"]+)\"");

    private WebServer server;
    private Visitor visitor;
    private String job;

    @BeforeAll
    void start(@TempDir Path folder) throws Exception {
        server = WebServer.start(0, folder.resolve("books.sqlite"));
        visitor = new Visitor(server.address());
        job = visitor.open("Photo job", "wren-160", "piston");
    }

    @AfterAll
    void stop() {
        server.close();
    }

    private Visitor.Page upload(String about, String caption, byte[] photo) throws Exception {
        Visitor.Page page = visitor.get(job + "/photo?about=" + about);
        Map<String, String> fields = Visitor.form(page, "/photo");
        fields.put("caption", caption);
        return visitor.upload(job + "/photo", fields, "photo", photo);
    }

    @Test
    void thePageAsksWithoutScripts() throws Exception {
        Visitor.Page page = visitor.get(job + "/photo?about=fuel-line");
        assertThat(page.body())
                .contains("enctype=\"multipart/form-data\"")
                .contains("accept=\"image/*\" capture")
                .contains("Fuel line");
    }

    @Test
    void whatIsServedHasNoPlaceInItAndStandsUpright() throws Exception {
        Visitor.Page after = upload("fuel-line", "Behind the bracket <b>", Snapshot.fromAPhone(3000, 1500, 6));
        assertThat(after.status()).as(after.text()).isEqualTo(200);
        assertThat(after.text()).contains("The photo is in the book.");

        Visitor.Page book = visitor.get(job + "/book");
        assertThat(book.body()).contains("Photo: Behind the bracket &lt;b>").doesNotContain("bracket <b>");
        byte[] served = visitor.bytes(picture(book));
        assertThat(new String(served, StandardCharsets.ISO_8859_1)).doesNotContain("Exif");
        BufferedImage seen = ImageIO.read(new ByteArrayInputStream(served));
        assertThat(seen.getWidth()).isEqualTo(1000);
        assertThat(seen.getHeight()).isEqualTo(2000);
    }

    @Test
    void ofTwoPhotosNoneIsDroppedInSilence() throws Exception {
        Map<String, String> fields = Visitor.form(visitor.get(job + "/photo?about=fuel-line"), "/photo");
        byte[] photo = Snapshot.fromAPhone(300, 200, 1);
        fields.put("caption", "two at once");
        Visitor.Page two = visitor.upload(job + "/photo", fields, "photo", photo, Snapshot.fromAPhone(200, 300, 1));
        assertThat(two.status()).isEqualTo(422);
        assertThat(two.text()).contains("Two photos came at once");
        assertThat(visitor.get(job + "/book").text()).doesNotContain("two at once");
        assertThat(visitor.upload(job + "/photo", fields, "photo", new byte[0], photo).text())
                .as("an empty field beside it is no photo")
                .contains("The photo is in the book.");
    }

    @Test
    void itIsShownWhereThePartComesOffAndWhereItGoesBack() throws Exception {
        String other = visitor.open("There and back", "wren-160", "cowl");
        Visitor.Page bench = visitor.get(other + "/bench");
        String joint = Visitor.form(bench, "/bench/done").get("step");
        Map<String, String> fields = Visitor.form(visitor.get(other + "/photo?about=" + joint), "/photo");
        fields.put("caption", "the long one bottom left");
        visitor.upload(other + "/photo", fields, "photo", Snapshot.fromAPhone(300, 200, 1));
        assertThat(visitor.get(other + "/bench").body()).contains("the long one bottom left").contains("<img src=\"");
        assertThat(visitor.get(other + "/found?joint=" + joint).body()).contains("the long one bottom left");

        visitor.strip(other, 2);
        boolean shown = false;
        for (int i = 0; i < 40 && !shown; i++) {
            Visitor.Page back = visitor.get(other + "/build/bench");
            if (!back.body().contains("action=\"" + other + "/build/done\"")) {
                break;
            }
            shown = back.body().contains("the long one bottom left") && back.body().contains("<img src=\"");
            visitor.post(other + "/build/done", Visitor.form(back, "/build/done"));
        }
        assertThat(shown).as("the photo of " + joint + " on the way back").isTrue();
    }

    @Test
    void aPhotoOfAPartIsOnThePageOfThatPart() throws Exception {
        upload("cowl", "how the cowl sat", Snapshot.fromAPhone(300, 200, 1));
        assertThat(visitor.get(job + "/bags/part?part=cowl").body()).contains("how the cowl sat").contains("<img src=\"");
        assertThat(visitor.get(job + "/bags/part?part=head").body()).doesNotContain("how the cowl sat");
    }

    @Test
    void whatIsNoPictureIsRefusedWithOneMessageAndNothingIsWritten() throws Exception {
        int before = entries();
        byte[][] wrong = {
            "<script>alert(1)</script>".getBytes(StandardCharsets.UTF_8),
            Snapshot.written(Snapshot.quarters(9, 9), "bmp"),
            {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, 1, 2, 3},
            new byte[0]
        };
        for (byte[] photo : wrong) {
            Visitor.Page page = upload("cowl", "kept as typed", photo);
            assertThat(page.status()).as(page.text()).isEqualTo(422);
            assertThat(page.body().split("class=\"fault\"", -1)).as(page.text()).hasSize(2);
            assertThat(page.body()).contains("kept as typed").doesNotContain("<script>alert");
        }
        assertThat(entries()).isEqualTo(before);
    }

    @Test
    void moreThanTwelveMegabytesIsRefusedWithAnAnswerThatArrives() throws Exception {
        Visitor.Page page = upload("cowl", "", new byte[Darkroom.MOST_BYTES + (1 << 20)]);
        assertThat(page.status()).isEqualTo(413);
        assertThat(page.text()).contains("12 MB");
    }

    /** The larger limit is for the photo alone: any other form stays small. */
    @Test
    void onlyThePhotoMayBeLarge() throws Exception {
        Map<String, String> fields = Visitor.form(visitor.get(job + "/note"), "/note");
        Visitor.Page page = visitor.upload(job + "/note", fields, "photo", new byte[400_000]);
        assertThat(page.status()).isEqualTo(413);
    }

    @Test
    void anotherJobDoesNotShowIt() throws Exception {
        upload("cowl", "mine", Snapshot.fromAPhone(200, 200, 1));
        String path = picture(visitor.get(job + "/book"));
        String other = visitor.open("Stranger", "wren-160", "cowl");
        assertThat(visitor.get(path.replace(job, other)).status()).isEqualTo(404);
        assertThat(visitor.get(job + "/photos/..%2f..%2fetc").status()).isIn(400, 404);
    }

    @Test
    void sentTwiceItIsThereOnce() throws Exception {
        Map<String, String> fields = Visitor.form(visitor.get(job + "/photo?about=cowl"), "/photo");
        fields.put("caption", "only once");
        byte[] photo = Snapshot.fromAPhone(320, 200, 1);
        assertThat(visitor.upload(job + "/photo", fields, "photo", photo).status()).isEqualTo(200);
        int before = entries();
        assertThat(visitor.upload(job + "/photo", fields, "photo", photo).status()).isEqualTo(200);
        assertThat(entries()).isEqualTo(before);
    }

    private int entries() throws Exception {
        return visitor.get(job + "/book").body().split("<li value=", -1).length;
    }

    /** Where the last picture of a page is loaded from. */
    private static String picture(Visitor.Page page) {
        Matcher found = PICTURE.matcher(page.body());
        String last = "";
        while (found.find()) {
            last = found.group(1);
        }
        assertThat(last).as("a picture on " + page.path()).isNotEmpty();
        return last;
    }
}
