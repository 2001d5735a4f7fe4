package gudgeon.app.photo;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.exif.ExifIFD0Directory;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * Makes of what a camera gave a print that is kept: upright, at most {@value #LONGEST_SIDE} dots along its longer side, JPEG,
 * with nothing in it but the picture. The same bytes give the same print. One at a time, since a large picture needs much
 * memory; what is larger than can be worked on is refused before it is unpacked.
 */
public final class Darkroom {
    /** More is not taken. */
    public static final int MOST_BYTES = 12 * 1024 * 1024;

    /** Dots along the longer side of a print. */
    public static final int LONGEST_SIDE = 2_000;

    /** Most dots of a picture that is unpacked: above what phones make, below what fills the memory. */
    static final long MOST_DOTS = 120_000_000;

    /** WebP cannot be unpacked in part. */
    private static final long MOST_DOTS_WHOLE = 30_000_000;

    private static final float QUALITY = 0.85f;
    private static final ReentrantLock ONE_AT_A_TIME = new ReentrantLock();

    private Darkroom() {}

    /** What became of it. */
    public sealed interface Developed {}

    /**
     * A print.
     *
     * @param jpeg its bytes
     * @param width dots
     * @param height dots
     */
    public record Print(byte[] jpeg, int width, int height) implements Developed {
        /** Its media type. */
        public static final String TYPE = "image/jpeg";
    }

    /** There is no print. */
    public record Spoilt(Reason reason) implements Developed {}

    /** Why there is no print. */
    public enum Reason {
        /** More than {@link Darkroom#MOST_BYTES}, or more dots than can be worked on. */
        TOO_LARGE,
        /** Neither JPEG nor PNG nor WebP. */
        NO_PICTURE,
        /** It begins like a picture and cannot be read. */
        BROKEN
    }

    /** Makes a print. */
    public static Developed develop(byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            return new Spoilt(Reason.TOO_LARGE);
        }
        Optional<String> format = findFormat(bytes);
        if (format.isEmpty()) {
            return new Spoilt(Reason.NO_PICTURE);
        }
        ONE_AT_A_TIME.lock();
        try {
            return developed(bytes, format.get());
        } finally {
            ONE_AT_A_TIME.unlock();
        }
    }

    private static Developed developed(byte[] bytes, String format) {
        Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(format);
        while (readers.hasNext()) {
            ImageReader reader = readers.next();
            try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
                reader.setInput(in, true, true);
                long dots = (long) reader.getWidth(0) * reader.getHeight(0);
                if (dots > (format.equals("webp") ? MOST_DOTS_WHOLE : MOST_DOTS)) {
                    return new Spoilt(Reason.TOO_LARGE);
                }
                return print(upright(read(reader), orientation(bytes)));
            } catch (IOException | RuntimeException e) {
                // readers of pictures fail in many ways on what is no picture; another reader may know it
                continue;
            } finally {
                reader.dispose();
            }
        }
        return new Spoilt(Reason.BROKEN);
    }

    /** Unpacked, every second or third dot of a very large one: what is left is still larger than the print. */
    private static BufferedImage read(ImageReader reader) throws IOException {
        ImageReadParam how = reader.getDefaultReadParam();
        int longest = Math.max(reader.getWidth(0), reader.getHeight(0));
        int step = Math.max(1, longest / (LONGEST_SIDE * 3 / 2));
        how.setSourceSubsampling(step, step, 0, 0);
        return reader.read(0, how);
    }

    /** Turned as its camera was held, made smaller, on white where it lets light through. */
    private static BufferedImage upright(BufferedImage picture, int orientation) {
        BufferedImage small = picture;
        while (Math.max(small.getWidth(), small.getHeight()) >= 2 * LONGEST_SIDE) {
            small = drawn(small, small.getWidth() / 2, small.getHeight() / 2, AffineTransform.getScaleInstance(0.5, 0.5));
        }
        double scale = Math.min(1, (double) LONGEST_SIDE / Math.max(small.getWidth(), small.getHeight()));
        int width = Math.max(1, (int) Math.round(small.getWidth() * scale));
        int height = Math.max(1, (int) Math.round(small.getHeight() * scale));
        AffineTransform turn = turned(orientation, width, height);
        turn.scale((double) width / small.getWidth(), (double) height / small.getHeight());
        boolean lying = orientation >= 5;
        return drawn(small, lying ? height : width, lying ? width : height, turn);
    }

    private static BufferedImage drawn(BufferedImage from, int width, int height, AffineTransform how) {
        BufferedImage to = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = to.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        pen.setColor(Color.WHITE);
        pen.fill(new Rectangle(width, height));
        pen.drawImage(from, how, null);
        pen.dispose();
        return to;
    }

    /** From the picture as stored to the picture as seen, both of that size. Source: [EXIF] tag 0x0112. */
    private static AffineTransform turned(int orientation, int width, int height) {
        return switch (orientation) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, width, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, width, height);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, height);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, height, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, height, width);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, width);
            default -> new AffineTransform();
        };
    }

    /** 1 to 8 as the camera noted it; 1, upright, when it noted nothing that can be read. */
    private static int orientation(byte[] bytes) {
        try {
            ExifIFD0Directory noted = ImageMetadataReader.readMetadata(new ByteArrayInputStream(bytes))
                    .getFirstDirectoryOfType(ExifIFD0Directory.class);
            Integer orientation = noted == null ? null : noted.getInteger(ExifIFD0Directory.TAG_ORIENTATION);
            return orientation == null || orientation < 1 || orientation > 8 ? 1 : orientation;
        } catch (ImageProcessingException | IOException | RuntimeException e) {
            return 1; // what a camera noted may be rubbish while the picture is whole
        }
    }

    private static Print print(BufferedImage picture) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            ImageWriteParam how = writer.getDefaultWriteParam();
            how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            how.setCompressionQuality(QUALITY);
            writer.setOutput(out);
            writer.write(null, new IIOImage(picture, null, null), how);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot write a picture in memory", e);
        } finally {
            writer.dispose();
        }
        return new Print(bytes.toByteArray(), picture.getWidth(), picture.getHeight());
    }

    /** The kind of picture by its first bytes. */
    private static Optional<String> findFormat(byte[] bytes) {
        if (starts(bytes, 0, 0xFF, 0xD8, 0xFF)) {
            return Optional.of("jpeg");
        }
        if (starts(bytes, 0, 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n')) {
            return Optional.of("png");
        }
        if (starts(bytes, 0, 'R', 'I', 'F', 'F') && starts(bytes, 8, 'W', 'E', 'B', 'P')) {
            return Optional.of("webp");
        }
        return Optional.empty();
    }

    private static boolean starts(byte[] bytes, int at, int... head) {
        if (bytes.length < at + head.length) {
            return false;
        }
        for (int i = 0; i < head.length; i++) {
            if ((bytes[at + i] & 0xFF) != head[i]) {
                return false;
            }
        }
        return true;
    }
}
