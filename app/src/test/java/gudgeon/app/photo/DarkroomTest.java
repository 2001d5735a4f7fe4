package gudgeon.app.photo;

import static org.assertj.core.api.Assertions.assertThat;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.GpsDirectory;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.Random;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Photos made fit to be kept. Where the first row and column of a picture are seen is the table of the Exif standard, tag 0x0112. */
class DarkroomTest {
    @Test
    void thePlaceIsGone() throws Exception {
        byte[] photo = Snapshot.fromAPhone(640, 480, 1);
        assertThat(ImageMetadataReader.readMetadata(new ByteArrayInputStream(photo))
                        .getDirectoriesOfType(GpsDirectory.class))
                .singleElement()
                .extracting(before -> String.valueOf(before.getGeoLocation()))
                .isEqualTo("51.5, -0.125");

        byte[] print = print(photo).jpeg();
        var after = ImageMetadataReader.readMetadata(new ByteArrayInputStream(print));
        assertThat(after.getFirstDirectoryOfType(GpsDirectory.class)).isNull();
        assertThat(after.getFirstDirectoryOfType(ExifIFD0Directory.class)).isNull();
        assertThat(new String(print, StandardCharsets.ISO_8859_1)).doesNotContain("Exif").doesNotContain("http");
    }

    @ParameterizedTest(name = "orientation {0}: first row {1}, first column {2}")
    @CsvSource({
        "1, top, left", "2, top, right", "3, bottom, right", "4, bottom, left",
        "5, left, top", "6, right, top", "7, right, bottom", "8, left, bottom"
    })
    void itStandsAsTheCameraWasHeld(int orientation, String row, String column) throws Exception {
        BufferedImage seen = seen(Snapshot.fromAPhone(400, 200, orientation));
        boolean lying = orientation >= 5;
        assertThat(seen.getWidth()).isEqualTo(lying ? 200 : 400);
        assertThat(seen.getHeight()).isEqualTo(lying ? 400 : 200);
        assertNear(corner(seen, row, column), Snapshot.TOP_LEFT);
        assertNear(corner(seen, row, opposite(column)), Snapshot.TOP_RIGHT);
        assertNear(corner(seen, opposite(row), column), Snapshot.BOTTOM_LEFT);
        assertNear(corner(seen, opposite(row), opposite(column)), Snapshot.BOTTOM_RIGHT);
    }

    @ParameterizedTest
    @CsvSource({"2000, 1500, 2000, 1500", "2400, 1200, 2000, 1000", "4000, 3000, 2000, 1500", "700, 6100, 229, 2000"})
    void theLongerSideHasAtMostTwoThousandDots(int width, int height, int printWidth, int printHeight) throws Exception {
        Darkroom.Print print = print(Snapshot.written(Snapshot.quarters(width, height), "jpeg"));
        assertThat(print.width()).isBetween(printWidth - 1, printWidth + 1);
        assertThat(print.height()).isBetween(printHeight - 1, printHeight + 1);
        BufferedImage seen = ImageIO.read(new ByteArrayInputStream(print.jpeg()));
        assertThat(seen.getWidth()).isEqualTo(print.width());
        assertNear(corner(seen, "bottom", "right"), Snapshot.BOTTOM_RIGHT);
    }

    @Test
    void whatLetsLightThroughIsOnWhite() throws Exception {
        BufferedImage clear = new BufferedImage(50, 50, BufferedImage.TYPE_INT_ARGB);
        assertNear(seen(Snapshot.written(clear, "png")).getRGB(25, 25), Color.WHITE);
    }

    /** The smallest lossy and lossless pictures that the format's test suites use; from memory, four by four and one by one. */
    @Test
    void webpIsRead() {
        byte[] lossy = Base64.getDecoder().decode("UklGRiIAAABXRUJQVlA4IBYAAAAwAQCdASoBAAEADsD+JaQAA3AAAAAA");
        assertThat(Darkroom.develop(lossy)).isInstanceOf(Darkroom.Print.class);
    }

    @Test
    void theSamePictureGivesTheSamePrint() {
        byte[] photo = Snapshot.fromAPhone(900, 700, 6);
        assertThat(print(photo).jpeg()).isEqualTo(print(photo).jpeg());
    }

    @Test
    void whatIsNoPictureIsNotKept() {
        assertSpoilt(new byte[0], Darkroom.Reason.NO_PICTURE);
        assertSpoilt("<svg onload='alert(1)'/>".getBytes(StandardCharsets.UTF_8), Darkroom.Reason.NO_PICTURE);
        assertSpoilt("<html>\u00ff\u00d8".getBytes(StandardCharsets.UTF_8), Darkroom.Reason.NO_PICTURE);
        assertSpoilt(Snapshot.written(Snapshot.quarters(8, 8), "bmp"), Darkroom.Reason.NO_PICTURE);
        assertSpoilt(new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) 0xE0}, Darkroom.Reason.BROKEN);
        assertSpoilt(Arrays.copyOf(Snapshot.written(Snapshot.quarters(90, 90), "png"), 40), Darkroom.Reason.BROKEN);
        assertSpoilt(new byte[Darkroom.MOST_BYTES + 1], Darkroom.Reason.TOO_LARGE);
    }

    /** A few bytes may claim a picture that fills any memory: it is refused by its size, before it is unpacked. */
    @Test
    void aPictureTooLargeToUnpackIsRefused() {
        byte[] png = Snapshot.written(Snapshot.quarters(8, 8), "png");
        ByteBuffer head = ByteBuffer.wrap(png);
        head.putInt(16, 60_000).putInt(20, 60_000);
        CRC32 sum = new CRC32();
        sum.update(png, 12, 17);
        head.putInt(29, (int) sum.getValue());
        assertSpoilt(png, Darkroom.Reason.TOO_LARGE);
    }

    /** Whatever is sent, there is an answer: 400 pictures with bytes changed at random. */
    @Test
    void damagedPicturesNeverFail() {
        Random chance = new Random(20_261_125);
        byte[][] whole = {Snapshot.fromAPhone(64, 48, 6), Snapshot.written(Snapshot.quarters(64, 48), "png")};
        for (int i = 0; i < 400; i++) {
            byte[] hurt = whole[i % 2].clone();
            for (int hit = 0; hit <= i % 9; hit++) {
                hurt[4 + chance.nextInt(hurt.length - 4)] = (byte) chance.nextInt();
            }
            byte[] cut = Arrays.copyOf(hurt, i % 3 == 0 ? 5 + chance.nextInt(hurt.length - 5) : hurt.length);
            if (Darkroom.develop(cut) instanceof Darkroom.Print print) {
                assertThat(new String(print.jpeg(), StandardCharsets.ISO_8859_1)).as("picture " + i).doesNotContain("Exif");
            }
        }
    }

    private static Darkroom.Print print(byte[] photo) {
        assertThat(Darkroom.develop(photo)).isInstanceOf(Darkroom.Print.class);
        return (Darkroom.Print) Darkroom.develop(photo);
    }

    private static BufferedImage seen(byte[] photo) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(print(photo).jpeg()));
    }

    private static void assertSpoilt(byte[] photo, Darkroom.Reason reason) {
        assertThat(Darkroom.develop(photo)).isEqualTo(new Darkroom.Spoilt(reason));
    }

    private static String opposite(String side) {
        return switch (side) {
            case "top" -> "bottom";
            case "bottom" -> "top";
            case "left" -> "right";
            default -> "left";
        };
    }

    /** The colour a quarter of the way in from two sides. */
    private static int corner(BufferedImage image, String one, String other) {
        boolean right = one.equals("right") || other.equals("right");
        boolean bottom = one.equals("bottom") || other.equals("bottom");
        return image.getRGB(image.getWidth() * (right ? 3 : 1) / 4, image.getHeight() * (bottom ? 3 : 1) / 4);
    }

    /** JPEG changes colours a little. */
    private static void assertNear(int rgb, Color wanted) {
        Color colour = new Color(rgb);
        assertThat(Math.abs(colour.getRed() - wanted.getRed())
                        + Math.abs(colour.getGreen() - wanted.getGreen())
                        + Math.abs(colour.getBlue() - wanted.getBlue()))
                .as(colour + " is near " + wanted)
                .isLessThan(40);
    }
}
