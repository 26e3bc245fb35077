package stretchwright.web.draw;

import java.util.List;
import stretchwright.ground.Point;

/**
 * A hand as a mitten that pinches: the tips of finger and thumb at 0, 0, the wrist to the right. In px of its drawing; set
 * down turned and, for the other hand, mirrored.
 */
final class Hand {
    private static final double SIZE = 0.88;

    private final Pen pen;
    private final Point tip;
    private final double degrees;
    private final boolean mirrored;

    private Hand(Pen pen, Point tip, double degrees, boolean mirrored) {
        this.pen = pen;
        this.tip = tip;
        this.degrees = degrees;
        this.mirrored = mirrored;
    }

    /** Comes from the right. */
    static void right(Pen pen, Point tip, double degrees) {
        new Hand(pen, tip, degrees, false).draw();
    }

    /** Comes from the left. */
    static void left(Pen pen, Point tip, double degrees) {
        new Hand(pen, tip, degrees, true).draw();
    }

    private Point set(double x, double y) {
        Point p = new Point(SIZE * x, SIZE * y).turned(degrees);
        return tip.plus(mirrored ? p.mirrored() : p);
    }

    /** The thumb lies nearer to who looks: it is drawn last. */
    private void draw() {
        fingers();
        thumb();
        pen.curve(Look.THIN, set(99, 28), set(102, 3), set(100, -22));
        pen.line(Look.THIN, set(99, 28), set(114, 29));
        pen.line(Look.THIN, set(100, -22), set(115, -23));
    }

    private void fingers() {
        pen.curve(
                Look.BODY,
                List.of(
                        set(96, 27),
                        set(80, 28),
                        set(64, 26),
                        set(46, 26),
                        set(28, 20),
                        set(12, 10),
                        set(1, 3),
                        set(-4, -2),
                        set(0, -6),
                        set(10, -4),
                        set(24, 2),
                        set(38, 5),
                        set(52, 2),
                        set(62, -14),
                        set(80, -22),
                        set(97, -21)));
        pen.curve(Look.THIN, set(40, 24), set(44, 16), set(40, 9));
        pen.curve(Look.THIN, set(20, 15), set(26, 11), set(27, 7));
    }

    private void thumb() {
        pen.curve(
                Look.BODY,
                List.of(
                        set(78, -3),
                        set(60, 0),
                        set(44, -3),
                        set(28, -10),
                        set(12, -10),
                        set(0, -6),
                        set(-4, -10),
                        set(2, -16),
                        set(16, -20),
                        set(34, -21),
                        set(52, -21),
                        set(66, -20)));
        pen.curve(Look.THIN, set(0, -7), set(5, -9), set(3, -14));
    }
}
