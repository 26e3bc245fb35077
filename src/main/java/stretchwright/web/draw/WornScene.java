package stretchwright.web.draw;

import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.ground.Point;

/** A small wearer with the pair on, seen from a side, on which folds, arrows and the ring are drawn. */
final class WornScene {
    /** From where the wearer is seen. */
    enum From {
        FRONT,
        BACK,
        SIDE,
        /** From the side, over a boot. */
        BOOT
    }

    private static final double SCALE = 0.24;
    private static final double MARGIN = 26;

    private final From from;
    private final Body body = UsualFigure.of(Figure.WOMAN);
    private final FrontFigure front;
    private final WornView view;
    private final Pen pen;
    private final double width;
    private final double height;

    /**
     * @param top how much higher than the waist the upper edge lies, mm
     * @param hem how much higher than usual the hem lies, mm
     * @param apart how far each foot is set aside, mm
     */
    WornScene(From from, double top, double hem, double apart) {
        this.from = from;
        this.front = new FrontFigure(body, apart);
        boolean boot = from == From.BOOT;
        double low = boot ? body.mm(Measure.ANKLE_BONE_HEIGHT) - 42 + hem : body.mm(Measure.ANKLE_HEIGHT) + hem;
        double waist = waist() + top;
        this.view = WornView.of(
                body,
                boot ? Optional.of(BootShape.usual(BootKind.FIGURE)) : Optional.empty(),
                new WornEdges(waist, waist, low + (boot ? 14 : 0), low),
                SCALE);
        boolean side = from == From.SIDE || boot;
        this.height = side ? view.height() : 20 + SCALE * front.top();
        this.width = side ? view.width() + 2 * MARGIN : 200;
        this.pen = side ? view.shifted(MARGIN) : new Pen(new Point(width / 2, 10 + SCALE * front.top()), SCALE);
        if (side) {
            view.draw();
        } else {
            front.draw(pen, -1, front.top());
            front.worn(pen, low, waist);
            seam();
        }
    }

    private void seam() {
        if (from == From.BACK) {
            pen.line(Look.SEAM, p(0, waist()), p(0, crotch()));
            fold(-1);
            fold(1);
        }
    }

    private void fold(double side) {
        double y = view.figure().furrow();
        pen.curve(Look.THIN, p(side * 8, y + 8), p(side * 60, y - 10), p(side * 110, y + 4));
    }

    static Point p(double x, double y) {
        return new Point(x, y);
    }

    double waist() {
        return body.mm(Measure.WAIST_HEIGHT);
    }

    double crotch() {
        return body.mm(Measure.CROTCH_HEIGHT);
    }

    double hip() {
        return body.mm(Measure.HIP_HEIGHT);
    }

    double knee() {
        return body.mm(Measure.KNEE_HEIGHT);
    }

    double calf() {
        return body.mm(Measure.CALF_HEIGHT);
    }

    double hem() {
        return body.mm(Measure.ANKLE_HEIGHT);
    }

    /** x of the front at a height, from the side. */
    double face(double height) {
        return view.figure().front(height);
    }

    double back(double height) {
        return view.figure().back(height);
    }

    double outer(double height) {
        return front.outer(height);
    }

    double inner(double height) {
        return front.inner(height);
    }

    WornScene band(double height) {
        boolean side = from == From.SIDE || from == From.BOOT;
        double left = side ? face(height) : -outer(height);
        double right = side ? back(height) : outer(height);
        pen.curve(Look.SEAM, p(left, height), p((left + right) / 2, height - 6), p(right, height));
        return this;
    }

    /** Short lines one below the other, as folds lie. */
    WornScene folds(Point middle, double half, int count, double apart) {
        for (int i = 0; i < count; i++) {
            double y = middle.y() + apart * ((count - 1) / 2.0 - i);
            pen.curve(
                    Look.TICK,
                    p(middle.x() - half, y + 0.25 * half),
                    p(middle.x(), y - 0.15 * half),
                    p(middle.x() + half, y + 0.25 * half));
        }
        return this;
    }

    WornScene line(Look look, Point... points) {
        pen.curve(look, points);
        return this;
    }

    /** A fold on either side of the middle. */
    WornScene both(Point... points) {
        pen.curve(Look.TICK, points);
        pen.curve(
                Look.TICK, java.util.Arrays.stream(points).map(Point::mirrored).toList());
        return this;
    }

    WornScene arrow(Point from, Point to) {
        pen.arrow(Look.MOVE, from, from.towards(to, 0.5), to);
        return this;
    }

    /** Two arrows towards each other. */
    WornScene tight(double left, double right, double height) {
        return arrow(p(left - 120, height), p(left - 22, height)).arrow(p(right + 120, height), p(right + 22, height));
    }

    /** Stitches that have given way. */
    WornScene burst(Point middle, double half, boolean upright) {
        Point[] points = new Point[9];
        for (int i = 0; i < points.length; i++) {
            double along = half * (i - 4) / 4;
            double across = i % 2 == 0 ? 16 : -16;
            points[i] = middle.plus(upright ? p(across, along) : p(along, across));
        }
        pen.line(Look.TICK, List.of(points), false);
        return this;
    }

    WornScene ring(Point middle, double across, double high) {
        pen.ring(middle, across, high);
        return this;
    }

    Drawing drawing(String title, String description) {
        return new Drawing(title, description, width, height, pen.drawn());
    }
}
