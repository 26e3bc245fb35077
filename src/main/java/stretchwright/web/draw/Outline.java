package stretchwright.web.draw;

import java.util.List;
import stretchwright.ground.Point;

/** Points of a piece, in mm with y up, as the path of a drawing in px with y down. */
public record Outline(double scale, double left, double foot) {
    /** @param left px of the piece's x = 0, foot px of its y = 0 */
    public Outline {
        if (!(scale > 0)) {
            throw new IllegalArgumentException("scale " + scale);
        }
    }

    public double x(double mm) {
        return left + scale * mm;
    }

    public double y(double mm) {
        return foot - scale * mm;
    }

    /** "M1 2L3 4Z", to a tenth of a px. */
    public String path(List<Point> points, boolean closed) {
        StringBuilder out = new StringBuilder(12 * points.size());
        for (int i = 0; i < points.size(); i++) {
            out.append(i == 0 ? 'M' : 'L');
            tenth(out, x(points.get(i).x()));
            out.append(' ');
            tenth(out, y(points.get(i).y()));
        }
        return out.append(closed ? "Z" : "").toString();
    }

    /** A number of px to a tenth. */
    public static String px(double value) {
        StringBuilder out = new StringBuilder();
        tenth(out, value);
        return out.toString();
    }

    private static void tenth(StringBuilder out, double value) {
        long tenths = Math.round(10 * value);
        out.append(tenths < 0 ? "-" : "").append(Math.abs(tenths) / 10);
        if (tenths % 10 != 0) {
            out.append('.').append(Math.abs(tenths) % 10);
        }
    }
}
