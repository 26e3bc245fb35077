package stretchwright.print.kit;

import java.awt.Color;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.util.Matrix;
import org.jspecify.annotations.Nullable;
import stretchwright.ground.Box;
import stretchwright.ground.Point;

/** One PDF page in mm: the scale of 72/25.4 points is set once, everything after it is millimetres. */
public final class PdfCanvas implements Canvas {
    static final double POINTS_PER_MM = 72 / 25.4;

    private final PDPageContentStream out;
    private final PDType0Font face;
    private final Function<SizeLine, PDOptionalContentGroup> layers;
    private final PDPage page;
    private final Spoken spoken;
    private final Box sheet;
    private Box window;
    private @Nullable Ink current;
    private Optional<SizeLine> size = Optional.empty();
    private double times = 1;
    private boolean light;

    /** @param layers of the document, by size */
    PdfCanvas(
            PDDocument document,
            PDType0Font face,
            Function<SizeLine, PDOptionalContentGroup> layers,
            double width,
            double height) {
        this.face = face;
        this.layers = layers;
        sheet = new Box(0, 0, width, height);
        window = sheet;
        page = new PDPage(new PDRectangle((float) (width * POINTS_PER_MM), (float) (height * POINTS_PER_MM)));
        document.addPage(page);
        try {
            out = new PDPageContentStream(document, page, AppendMode.OVERWRITE, true);
            spoken = new Spoken(out);
            out.transform(Matrix.getScaleInstance((float) POINTS_PER_MM, (float) POINTS_PER_MM));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All lines from here on are so many times as thick. */
    public PdfCanvas thick(double more) {
        times = more;
        current = null;
        return this;
    }

    /** From here on light on dark; the sheet is made dark first. */
    public PdfCanvas inverse() {
        light = true;
        current = null;
        write(() -> {
            spoken.decoration();
            out.setNonStrokingColor(0f);
            out.addRect(0, 0, (float) sheet.width(), (float) sheet.height());
            out.fill();
        });
        return this;
    }

    private float grey(Ink ink) {
        return (float) (light ? 1 - ink.grey() : ink.grey());
    }

    public Box sheet() {
        return sheet;
    }

    /** Nothing shows outside the box from here on; what lies wholly outside is left out of the file. */
    public void clip(Box box) {
        window = box;
        write(() -> {
            out.addRect((float) box.minX(), (float) box.minY(), (float) box.width(), (float) box.height());
            out.clip();
        });
    }

    @Override
    public void line(Ink ink, List<Point> points, boolean closed) {
        if (!Box.around(points).grown(ink.width()).meets(window)) {
            return;
        }
        write(() -> {
            spoken.decoration();
            take(ink);
            out.moveTo((float) points.get(0).x(), (float) points.get(0).y());
            for (Point p : points.subList(1, points.size())) {
                out.lineTo((float) p.x(), (float) p.y());
            }
            if (closed) {
                out.closePath();
            }
            out.stroke();
        });
    }

    @Override
    public void text(Writing w) {
        if (w.words().isBlank() || !Box.around(w.outline()).meets(window)) {
            return;
        }
        if (!spoken.inside()) {
            spoken(Tag.PARAGRAPH, "", () -> text(w));
            return;
        }
        write(() -> {
            out.setNonStrokingColor(grey(w.ink()));
            out.beginText();
            out.setFont(face, (float) w.size());
            Point start = w.start();
            out.setTextMatrix(
                    Matrix.getRotateInstance(StrictMath.toRadians(w.degrees()), (float) start.x(), (float) start.y()));
            out.showText(Letters.printable(w.words()));
            out.endText();
        });
    }

    @Override
    public void spoken(Tag tag, String words, Runnable inside) {
        if (spoken.inside()) {
            inside.run();
            return;
        }
        write(() -> spoken.begin(tag, words));
        inside.run();
        write(spoken::end);
    }

    /** In the colour and the dash of the size, on a layer that a reader can hide. */
    @Override
    public void in(SizeLine one, Runnable inside) {
        // marks end in the order in which they began: one may not end inside the layer
        write(() -> {
            spoken.endDecoration();
            out.beginMarkedContent(COSName.OC, layers.apply(one));
        });
        size = Optional.of(one);
        current = null;
        inside.run();
        size = Optional.empty();
        current = null;
        write(() -> {
            spoken.endDecoration();
            out.endMarkedContent();
        });
    }

    void close() throws IOException {
        spoken.endDecoration();
        out.close();
    }

    /** What is read out of the page, hung below the document's structure, in the order of its marks. */
    COSArray hang(PDStructureElement whole, int number) {
        page.setStructParents(number);
        page.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
        return spoken.hang(whole, page);
    }

    private void take(Ink ink) throws IOException {
        if (ink == current) {
            return;
        }
        current = ink;
        if (size.isPresent()) {
            out.setStrokingColor(new Color(size.get().colour()));
        } else {
            out.setStrokingColor(grey(ink));
        }
        out.setLineWidth((float) (times * ink.width()));
        out.setLineJoinStyle(0);
        out.setLineCapStyle(0);
        List<Double> wanted = outline(ink) ? size.map(SizeLine::dashes).orElse(ink.dashes()) : ink.dashes();
        float[] dashes = new float[wanted.size()];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = wanted.get(i).floatValue();
        }
        out.setLineDashPattern(dashes, 0);
    }

    private static boolean outline(Ink ink) {
        return ink == Ink.CUT || ink == Ink.SEW;
    }

    private interface Step {
        void run() throws IOException;
    }

    private static void write(Step step) {
        try {
            step.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
