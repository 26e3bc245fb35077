package stretchwright.print.kit;

import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import stretchwright.ground.Box;
import stretchwright.ground.Point;

/** Reads the stroked lines of a PDF page back, in mm from the lower left corner of the sheet. */
public final class PageReader extends PDFGraphicsStreamEngine {
    /** One stroked run of points with its pen, the box it was clipped to, and its layer, if any. */
    public record Stroke(
            List<Point> points, boolean closed, double width, double grey, boolean dashed, Box clip, String layer) {
        public Box box() {
            return Box.around(points);
        }
    }

    private static final double MM = 25.4 / 72;

    private final List<Stroke> strokes = new ArrayList<>();
    private final GeneralPath path = new GeneralPath();
    private final Deque<String> layers = new ArrayDeque<>(List.of(""));
    private boolean clipping;

    private PageReader(PDPage page) {
        super(page);
    }

    public static List<Stroke> strokes(PDPage page) {
        PageReader reader = new PageReader(page);
        try {
            reader.processPage(page);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return reader.strokes;
    }

    @Override
    public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
        super.beginMarkedContentSequence(tag, properties);
        layers.push(tag.equals(COSName.OC) ? properties.getString(COSName.NAME) : layers.getFirst());
    }

    @Override
    public void endMarkedContentSequence() {
        super.endMarkedContentSequence();
        layers.pop();
    }

    @Override
    public void strokePath() {
        Rectangle2D c = getGraphicsState().getCurrentClippingPath().getBounds2D();
        Box clip = new Box(c.getMinX() * MM, c.getMinY() * MM, c.getMaxX() * MM, c.getMaxY() * MM);
        double width = getGraphicsState().getLineWidth()
                * getGraphicsState().getCurrentTransformationMatrix().getScalingFactorX()
                * MM;
        double grey = getGraphicsState().getStrokingColor().getComponents()[0];
        boolean dashed = getGraphicsState().getLineDashPattern().getDashArray().length > 0;
        List<Point> points = new ArrayList<>();
        boolean closed = false;
        double[] at = new double[6];
        for (PathIterator i = path.getPathIterator(AffineTransform.getScaleInstance(MM, MM)); !i.isDone(); i.next()) {
            int kind = i.currentSegment(at);
            if (kind == PathIterator.SEG_CLOSE) {
                closed = true;
            } else {
                points.add(new Point(at[0], at[1]));
            }
        }
        strokes.add(new Stroke(List.copyOf(points), closed, width, grey, dashed, clip, layers.getFirst()));
        path.reset();
    }

    @Override
    public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {
        path.moveTo(a.getX(), a.getY());
        path.lineTo(b.getX(), b.getY());
        path.lineTo(c.getX(), c.getY());
        path.lineTo(d.getX(), d.getY());
        path.closePath();
    }

    @Override
    public void clip(int windingRule) {
        clipping = true;
    }

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        path.lineTo(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        throw new AssertionError("no curve is drawn");
    }

    @Override
    public Point2D getCurrentPoint() {
        return path.getCurrentPoint();
    }

    @Override
    public void closePath() {
        path.closePath();
    }

    @Override
    public void endPath() {
        if (clipping) {
            getGraphicsState().intersectClippingPath(path);
            clipping = false;
        }
        path.reset();
    }

    @Override
    public void fillPath(int windingRule) {
        // only a sheet that is made dark
        path.reset();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        throw new AssertionError("nothing is filled");
    }

    @Override
    public void drawImage(PDImage image) {
        throw new AssertionError("no picture is drawn");
    }

    @Override
    public void shadingFill(COSName name) {
        throw new AssertionError("nothing is shaded");
    }
}
