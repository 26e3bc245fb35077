package stretchwright.print.kit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Bidi;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The typeface on paper: how wide words are, where lines break, what stands in for letters it lacks. */
public final class Letters {
    /** Code points of a name that still reads as a name on a label. */
    public static final int LONGEST_NAME = 60;

    /** From one baseline to the next, in letter sizes. */
    public static final double LEADING = 1.3;

    private static final char SUBSTITUTE = '\u25A1';
    private static final Pattern SPACE = Pattern.compile("\\s+");
    /** Letters from here on may run from right to left, but for the marks from dashes to operators. */
    private static final char HEBREW = '\u0590';

    private static final char SOFT_HYPHEN = '\u00AD';
    private static final TrueTypeFont FACE = face();
    private static final CmapLookup GLYPHS = glyphs();
    /** Of letters asked for so far: two more than the advance; 1 for those the face lacks. */
    private static final short[] ADVANCES = new short[65536];

    /** 11 pt in mm: what is read at the machine. */
    public static final double AT_THE_MACHINE = 11 * 25.4 / 72;

    private Letters() {}

    /** Read once, never changed and never closed: any number of documents may be made of it at once. */
    static TrueTypeFont typeface() {
        return FACE;
    }

    /** The typeface that PDFBox carries in its own jar (SIL Open Font License). */
    private static InputStream file() {
        InputStream in =
                PDDocument.class.getResourceAsStream("/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf");
        if (in == null) {
            throw new IllegalStateException("the PDF library came without its typeface");
        }
        return in;
    }

    /** Cut to so many code points, white space and control characters made plain spaces; blank becomes "-". */
    public static String shortened(String text, int most) {
        StringBuilder out = new StringBuilder();
        int kept = 0;
        for (int codePoint : text.strip().codePoints().limit(most + 1L).toArray()) {
            if (kept == most) {
                out.append('\u2026');
                break;
            }
            boolean plain = !Character.isISOControl(codePoint)
                    && !Character.isWhitespace(codePoint)
                    && Character.getType(codePoint) != Character.SURROGATE;
            out.appendCodePoint(plain ? codePoint : ' ');
            kept++;
        }
        return out.toString().isBlank() ? "-" : out.toString();
    }

    /** As it can be put on paper: left to right in the order seen, a hollow square for each letter the face lacks. */
    public static String printable(String text) {
        return isPlain(text) ? text : made(text);
    }

    /** Whether every letter is in the face, and none is dropped or runs from right to left. */
    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean latin = c < HEBREW && c != SOFT_HYPHEN;
            boolean mark =
                    c >= '\u2010' && c <= '\u2027' || c >= '\u2030' && c <= '\u205E' || c >= '\u2190' && c <= '\u22FF';
            if (!(latin || mark) || advance(c) < 0) {
                return false;
            }
        }
        return true;
    }

    private static String made(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints()
                .filter(Letters::takesSpace)
                .forEach(c -> out.append(c < 65536 && advance((char) c) >= 0 ? (char) c : SUBSTITUTE));
        String plain = out.toString();
        return Bidi.requiresBidi(plain.toCharArray(), 0, plain.length()) ? inOrderSeen(plain) : plain;
    }

    /** Width in the unit of the size. */
    public static double width(String text, double size) {
        String seen = printable(text);
        double sum = 0;
        for (int i = 0; i < seen.length(); i++) {
            sum += advance(seen.charAt(i));
        }
        return sum * size / 1000;
    }

    /** Broken into lines no wider than asked; a word that is too wide alone is broken too. */
    public static List<String> wrapped(String text, double size, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : SPACE.split(text.strip())) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(longer, size) <= width) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            while (width(line, size) > width && line.codePointCount(0, line.length()) > 1) {
                int cut = fitting(line, size, width);
                lines.add(line.substring(0, cut));
                line = line.substring(cut);
            }
        }
        lines.add(line);
        return lines;
    }

    private static int fitting(String word, double size, double width) {
        int cut = word.offsetByCodePoints(0, 1);
        while (cut < word.length()) {
            int next = word.offsetByCodePoints(cut, 1);
            if (width(word.substring(0, next), size) > width) {
                break;
            }
            cut = next;
        }
        return cut;
    }

    private static boolean takesSpace(int codePoint) {
        int type = Character.getType(codePoint);
        return type != Character.FORMAT && !(codePoint >= 0xFE00 && codePoint <= 0xFE0F);
    }

    private static String inOrderSeen(String text) {
        Bidi bidi = new Bidi(text, Bidi.DIRECTION_LEFT_TO_RIGHT);
        int runs = bidi.getRunCount();
        byte[] levels = new byte[runs];
        String[] parts = new String[runs];
        for (int i = 0; i < runs; i++) {
            levels[i] = (byte) bidi.getRunLevel(i);
            String part = text.substring(bidi.getRunStart(i), bidi.getRunLimit(i));
            parts[i] = levels[i] % 2 == 1 ? new StringBuilder(part).reverse().toString() : part;
        }
        Bidi.reorderVisually(levels, 0, parts, 0, runs);
        return String.join("", parts);
    }

    /** Advance of a letter in thousandths of the size; -1 for letters the face lacks. */
    private static int advance(char letter) {
        int known = ADVANCES[letter];
        if (known == 0) {
            known = 2 + looked(letter);
            ADVANCES[letter] = (short) known;
        }
        return known - 2;
    }

    private static int looked(char letter) {
        try {
            int glyph = GLYPHS.getGlyphId(letter);
            return glyph == 0 ? -1 : (int) Math.round(FACE.getAdvanceWidth(glyph) * 1000.0 / FACE.getUnitsPerEm());
        } catch (IOException e) {
            throw unread(e);
        }
    }

    private static TrueTypeFont face() {
        try (InputStream in = file()) {
            TrueTypeFont face = new TTFParser(true).parse(new RandomAccessReadBuffer(in));
            // looking for ligatures took half the time of a make, and the widths reckoned with know of none
            face.setEnableGsub(false);
            return face;
        } catch (IOException e) {
            throw unread(e);
        }
    }

    private static CmapLookup glyphs() {
        try {
            return FACE.getUnicodeCmapLookup();
        } catch (IOException e) {
            throw unread(e);
        }
    }

    private static UncheckedIOException unread(IOException e) {
        return new UncheckedIOException("the typeface could not be read", e);
    }
}
