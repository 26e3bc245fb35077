package stretchwright.exchange;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Letters as outlines from the typeface in PDFBox's own jar, so that no picture hangs on what a machine has installed. */
final class Face implements AutoCloseable {
    /** Height of a capital in this face, in its own size (read from its outlines). */
    private static final double CAPITAL = 0.69;

    private final TrueTypeFont face;
    private final CmapLookup glyphs;
    private final double unit;

    private Face(TrueTypeFont face) throws IOException {
        this.face = face;
        this.glyphs = face.getUnicodeCmapLookup();
        this.unit = 1 / (CAPITAL * face.getUnitsPerEm());
    }

    static Face open() {
        try (InputStream in =
                PDDocument.class.getResourceAsStream("/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf")) {
            if (in == null) {
                throw new IllegalStateException("the PDF library came without its typeface");
            }
            return new Face(new TTFParser().parse(new RandomAccessReadBuffer(in)));
        } catch (IOException e) {
            throw new UncheckedIOException("the typeface could not be read", e);
        }
    }

    /** A line of letters, y up, its foot at the origin, capitals one unit high. */
    Path2D outline(String words) {
        Path2D out = new Path2D.Double();
        double x = 0;
        try {
            for (int i = 0; i < words.length(); i++) {
                int number = glyphs.getGlyphId(words.charAt(i));
                GlyphData glyph = face.getGlyph().getGlyph(number);
                AffineTransform place = new AffineTransform(unit, 0, 0, unit, x * unit, 0);
                if (glyph != null) {
                    out.append(glyph.getPath().getPathIterator(place), false);
                }
                x += face.getAdvanceWidth(number);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("the typeface could not be read", e);
        }
        return out;
    }

    @Override
    public void close() {
        try {
            face.close();
        } catch (IOException e) {
            throw new UncheckedIOException("the typeface could not be closed", e);
        }
    }
}
