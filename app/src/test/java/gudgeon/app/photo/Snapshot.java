package gudgeon.app.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;

/** Pictures as a phone makes them: four quarters of four colours, with an Exif segment that holds a place on the earth. */
public final class Snapshot {
    public static final Color TOP_LEFT = Color.RED;
    public static final Color TOP_RIGHT = Color.GREEN;
    public static final Color BOTTOM_LEFT = Color.BLUE;
    public static final Color BOTTOM_RIGHT = Color.YELLOW;

    private Snapshot() {}

    /** The four quarters, as they lie in the file. */
    public static BufferedImage quarters(int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        quarter(pen, TOP_LEFT, 0, 0, width, height);
        quarter(pen, TOP_RIGHT, width / 2, 0, width, height);
        quarter(pen, BOTTOM_LEFT, 0, height / 2, width, height);
        quarter(pen, BOTTOM_RIGHT, width / 2, height / 2, width, height);
        pen.dispose();
        return image;
    }

    private static void quarter(Graphics2D pen, Color colour, int left, int top, int width, int height) {
        pen.setColor(colour);
        pen.fillRect(left, top, width - left, height - top);
    }

    /** Written in a format that Java writes: jpeg, png, bmp. */
    public static byte[] written(BufferedImage image, String format) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            if (!ImageIO.write(image, format, out)) {
                throw new IllegalStateException("Java writes " + format);
            }
            return out.toByteArray();
        } catch (IOException e) {
            throw new IllegalStateException("memory can be written", e);
        }
    }

    /** A JPEG with an Exif segment: that orientation, and a place at 51.5 north, 0.125 west. */
    public static byte[] fromAPhone(int width, int height, int orientation) {
        byte[] plain = written(quarters(width, height), "jpeg");
        byte[] exif = exif(orientation);
        ByteBuffer all = ByteBuffer.allocate(plain.length + exif.length + 4);
        all.put(plain, 0, 2); // start of image
        all.put((byte) 0xFF).put((byte) 0xE1).putShort((short) (exif.length + 2)).put(exif);
        all.put(plain, 2, plain.length - 2);
        return all.array();
    }

    /** TIFF structure, little-endian. Source: [EXIF] 4.6; tags 0x0112 orientation, 0x8825 pointer to the GPS tags. */
    private static byte[] exif(int orientation) {
        ByteBuffer tiff = ByteBuffer.allocate(200).order(ByteOrder.LITTLE_ENDIAN);
        tiff.put("II".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
        tiff.putShort((short) 2); // two entries at 8
        entry(tiff, 0x0112, 3, 1, orientation);
        entry(tiff, 0x8825, 4, 1, 38);
        tiff.putInt(0);
        tiff.putShort((short) 4); // four entries at 38
        entry(tiff, 1, 2, 2, 'N');
        entry(tiff, 2, 5, 3, 92);
        entry(tiff, 3, 2, 2, 'W');
        entry(tiff, 4, 5, 3, 116);
        tiff.putInt(0);
        tiff.putInt(51).putInt(1).putInt(30).putInt(1).putInt(0).putInt(1); // at 92
        tiff.putInt(0).putInt(1).putInt(7).putInt(1).putInt(30).putInt(1); // at 116
        byte[] head = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
        ByteBuffer all = ByteBuffer.allocate(head.length + tiff.position());
        return all.put(head).put(tiff.array(), 0, tiff.position()).array();
    }

    private static void entry(ByteBuffer tiff, int tag, int type, int count, int value) {
        tiff.putShort((short) tag).putShort((short) type).putInt(count).putInt(value);
    }
}
