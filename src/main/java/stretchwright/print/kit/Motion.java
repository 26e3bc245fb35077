package stretchwright.print.kit;

import java.util.List;
import stretchwright.ground.Point;

/** Turned about the origin, then moved; lengths stay as they are. */
public record Motion(double degrees, Point move) {
    static Motion by(double x, double y) {
        return new Motion(0, new Point(x, y));
    }

    public Point apply(Point p) {
        return p.turned(degrees).plus(move);
    }

    public List<Point> apply(List<Point> points) {
        return points.stream().map(this::apply).toList();
    }

    /** This first, then moved on. */
    public Motion then(Point further) {
        return new Motion(degrees, move.plus(further));
    }

    /** Draws on the canvas with everything turned and moved. */
    public Canvas on(Canvas canvas) {
        return new Canvas() {
            @Override
            public void line(Ink ink, List<Point> points, boolean closed) {
                canvas.line(ink, apply(points), closed);
            }

            @Override
            public void text(Writing w) {
                canvas.text(w.carried(Motion.this));
            }

            @Override
            public void spoken(Tag tag, String words, Runnable inside) {
                canvas.spoken(tag, words, inside);
            }

            @Override
            public void in(SizeLine size, Runnable inside) {
                canvas.in(size, inside);
            }
        };
    }
}
