package stretchwright.web.draw;

import java.util.List;
import stretchwright.ground.Point;

/**
 * Writes the inside of a drawing: points in mm with y up become px with y down.
 *
 * <p>Classes that the page's style sheet must have (names as in its own drawings): body, thin, worn, cloth-out, cloth-in,
 * pencilled, grain, sew, ribbon, tapeline, tapeline between, dot, level, arrowhead, mark with holds, look, stop or works; of
 * letters lab and f16. New here: "outline tool", an ink line filled with the sheet (rule, book, wheel, guard).
 * Their widths are px at the shown width.
 */
final class Pen {
    enum Side {
        START("start"),
        MIDDLE("middle"),
        END("end");

        private final String anchor;

        Side(String anchor) {
            this.anchor = anchor;
        }
    }

    private final Point origin;
    private final double scale;
    private final StringBuilder out;

    /**
     * @param origin px of the point 0, 0
     * @param scale px for a mm
     */
    Pen(Point origin, double scale) {
        this(origin, scale, new StringBuilder());
    }

    private Pen(Point origin, double scale, StringBuilder out) {
        this.origin = origin;
        this.scale = scale;
        this.out = out;
    }

    /** The same pen in the same drawing, for something whose own origin lies at a point. */
    Pen from(Point mm) {
        return new Pen(at(mm), scale, out);
    }

    /** In px itself, y up from the lower edge. */
    static Pen px(double height) {
        return new Pen(new Point(0, height), 1);
    }

    Point at(Point mm) {
        return new Point(origin.x() + scale * mm.x(), origin.y() - scale * mm.y());
    }

    /** Another scale in the same drawing. */
    Pen of(Point mm, double pxForMm) {
        return new Pen(at(mm), pxForMm, out);
    }

    /** The point in mm that is shown there. */
    Point shownAt(Point px) {
        return new Point((px.x() - origin.x()) / scale, (origin.y() - px.y()) / scale);
    }

    /** The length in mm that is so many px. */
    double mm(double px) {
        return px / scale;
    }

    void line(Look look, Point... points) {
        line(look, List.of(points), false);
    }

    void line(Look look, List<Point> points, boolean closed) {
        StringBuilder d = new StringBuilder();
        for (Point p : points) {
            d.append(d.isEmpty() ? 'M' : 'L').append(told(at(p)));
        }
        path(look, d.append(closed ? "Z" : ""));
    }

    void curve(Look look, Point... points) {
        curve(look, List.of(points));
    }

    void curve(Look look, List<Point> points) {
        path(look, smooth(points, false, true));
    }

    void shape(Look look, Point... points) {
        shape(look, List.of(points));
    }

    /** Closed and smooth all round. */
    void shape(Look look, List<Point> points) {
        path(look, smooth(points, true, true).append('Z'));
    }

    /** Closed; smooth within each run, a corner where two meet. */
    void runs(Look look, List<List<Point>> runs) {
        StringBuilder d = new StringBuilder();
        for (List<Point> run : runs) {
            d.append(smooth(run, false, d.isEmpty()));
        }
        path(look, d.append('Z'));
    }

    private StringBuilder smooth(List<Point> points, boolean closed, boolean first) {
        StringBuilder d = new StringBuilder(first ? "M" : "L").append(told(at(points.get(0))));
        for (Smooth.Arc arc : Smooth.arcs(points, closed)) {
            d.append('C').append(told(at(arc.first()))).append(' ');
            d.append(told(at(arc.second()))).append(' ').append(told(at(arc.to())));
        }
        return d;
    }

    private void path(Look look, CharSequence d) {
        out.append("<path ").append(look.attribute()).append(" d=\"").append(d).append("\"/>\n");
    }

    /** Its radius in px, whatever the scale. */
    void dot(Look look, Point middle, double px) {
        Point c = at(middle);
        out.append("<circle ").append(look.attribute()).append(" cx=\"").append(number(c.x()));
        out.append("\" cy=\"").append(number(c.y())).append("\" r=\"").append(number(px));
        out.append("\"/>\n");
    }

    void circle(Look look, Point middle, double mm) {
        dot(look, middle, mm * scale);
    }

    /** Half of an ellipse: the lower one, which is nearer to who looks, or the upper one. */
    void half(Look look, Point middle, double across, double high, boolean lower) {
        Point left = at(middle.plus(new Point(-across, 0)));
        Point right = at(middle.plus(new Point(across, 0)));
        path(
                look,
                "M" + told(left) + "A" + number(across * scale) + ' ' + number(high * scale) + " 0 0 " + (lower ? 0 : 1)
                        + ' ' + told(right));
    }

    /** A tape round something: in front drawn out, behind dotted. */
    void round(Point middle, double across, double high) {
        half(Look.TAPE_HIDDEN, middle, across, high, false);
        half(Look.TAPE, middle, across, high, true);
    }

    /** An arrow, bent as its points are, with its head at the last. */
    void arrow(Look look, Point... points) {
        curve(look, points);
        Point tip = points[points.length - 1];
        Point back = points[points.length - 2].minus(tip).unit().times(mm(11));
        line(look, tip.plus(back.turned(35)), tip, tip.plus(back.turned(-35)));
    }

    /** A chalk line with a dot at both ends: what is read off. */
    void read(Point from, Point to) {
        line(Look.TAPE, from, to);
        dot(Look.DOT, from, 6);
        dot(Look.DOT, to, 6);
    }

    /** The ring of "look", drawn by hand: it does not quite close. */
    void ring(Point middle, double across, double high) {
        double[][] way = {{80, 1.02}, {130, 1}, {185, 1.02}, {240, 0.98}, {300, 1.02}, {0, 1}, {50, 0.97}, {100, 0.9}};
        Point[] points = new Point[way.length];
        for (int i = 0; i < way.length; i++) {
            double a = Math.toRadians(way[i][0]);
            points[i] = middle.plus(new Point(across * way[i][1] * Math.cos(a), high * way[i][1] * Math.sin(a)));
        }
        curve(Look.RING, points);
    }

    void words(Look look, Point mm, Side side, String words) {
        Point p = at(mm);
        out.append("<text ").append(look.attribute()).append(" x=\"").append(number(p.x()));
        out.append("\" y=\"").append(number(p.y()));
        out.append("\" text-anchor=\"").append(side.anchor).append("\">");
        out.append(escaped(words)).append("</text>\n");
    }

    String drawn() {
        return out.toString();
    }

    private static String told(Point px) {
        return number(px.x()) + ' ' + number(px.y());
    }

    /** To a tenth, without idle zeros. */
    static String number(double value) {
        return Outline.px(value);
    }

    static String escaped(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
