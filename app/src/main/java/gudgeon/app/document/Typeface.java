package gudgeon.app.document;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Base64;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The faces that come with the program: their bytes, and how wide a text is in them. */
public enum Typeface {
    /** Labels and secondary headings. */
    SHEET_500("barlow-condensed-500", "barlow-condensed-latin-500-normal", "Sheet", 500),
    /** Headings. */
    SHEET_600("barlow-condensed-600", "barlow-condensed-latin-600-normal", "Sheet", 600),
    /** Running text and figures. */
    TEXT_400("atkinson-hyperlegible-next-400", "atkinson-hyperlegible-next-latin-400-normal", "Text", 400),
    /** Emphasis, and the one number that matters. */
    TEXT_700("atkinson-hyperlegible-next-700", "atkinson-hyperlegible-next-latin-700-normal", "Text", 700);

    private static final String FOLDER = "/gudgeon/fonts/";

    private final String file;
    private final String webFile;
    private final String family;
    private final int weight;

    Typeface(String file, String webFile, String family, int weight) {
        this.file = file;
        this.webFile = webFile;
        this.family = family;
        this.weight = weight;
    }

    /** The family name that style sheets of this program use. */
    public String family() {
        return family;
    }

    public int weight() {
        return weight;
    }

    /** The TrueType file. */
    public InputStream trueType() {
        return open(FOLDER + file + ".ttf");
    }

    /** A {@code @font-face} rule with the compressed face inside it, for a drawing that travels alone. */
    String fontFace() {
        try (InputStream bytes = open(FOLDER + webFile + ".woff2")) {
            return "@font-face{font-family:" + family + ";font-weight:" + weight + ";src:url(data:font/woff2;base64,"
                    + Base64.getEncoder().encodeToString(bytes.readAllBytes()) + ") format('woff2')}";
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the font " + webFile, e);
        }
    }

    /** Width of a text at a size, in the unit of the size; characters that the face lacks count one em. */
    public double width(String text, double size) {
        Metrics metrics = Loaded.METRICS[ordinal()];
        double units = text.codePoints().mapToDouble(metrics::advance).sum();
        return units * size / metrics.unitsPerEm;
    }

    /** Whether the face draws this character. */
    public boolean has(int codePoint) {
        return Loaded.METRICS[ordinal()].glyphs.getGlyphId(codePoint) > 0;
    }

    private static InputStream open(String resource) {
        InputStream stream = Typeface.class.getResourceAsStream(resource);
        if (stream == null) {
            throw new IllegalStateException("the program was built without its font " + resource);
        }
        return stream;
    }

    /** Read when first asked for. */
    private static final class Loaded {
        private static final Metrics[] METRICS = new Metrics[Typeface.values().length];

        static {
            for (Typeface face : Typeface.values()) {
                METRICS[face.ordinal()] = Metrics.read(face);
            }
        }
    }

    private record Metrics(TrueTypeFont font, CmapLookup glyphs, int unitsPerEm) {
        static Metrics read(Typeface face) {
            try (InputStream bytes = face.trueType()) {
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(bytes.readAllBytes()));
                return new Metrics(font, font.getUnicodeCmapLookup(), font.getUnitsPerEm());
            } catch (IOException e) {
                throw new UncheckedIOException("cannot read the font " + face.file, e);
            }
        }

        double advance(int codePoint) {
            int glyph = glyphs.getGlyphId(codePoint);
            try {
                return glyph == 0 ? unitsPerEm : font.getAdvanceWidth(glyph);
            } catch (IOException e) {
                throw new UncheckedIOException("cannot read a font's widths", e);
            }
        }
    }
}
