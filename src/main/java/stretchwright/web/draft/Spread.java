package stretchwright.web.draft;

import java.util.List;
import stretchwright.ground.Box;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.make.Session;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Piece;
import stretchwright.web.draw.Outline;
import stretchwright.web.draw.Svg;
import stretchwright.web.frame.Opened;

/** What a drawing of a pattern is made of: the make, where its legs lie on the sheet, and what was drawn so far. */
record Spread(Opened make, Spread.Sheet sheet, List<Placed> legs, Svg svg) {
    Spread {
        legs = List.copyOf(legs);
    }

    /** A piece with its place on the sheet. */
    record Placed(Piece piece, Outline at) {}

    /**
     * The sheet that it is drawn on, px.
     *
     * @param left where the legs begin
     * @param room how wide they may be
     * @param aside where the other pieces stand; 0 for none
     */
    record Sheet(double width, double height, double left, double room, double aside, boolean wide) {
        static final Sheet WIDE = new Sheet(930, 660, 428, 280, 722, true);
        static final Sheet NARROW = new Sheet(390, 420, 150, 200, 0, false);
    }

    Session session() {
        return make.session();
    }

    Placed front() {
        return legs.get(0);
    }

    Placed back() {
        return legs.get(legs.size() - 1);
    }

    String say(String key) {
        return make.voice().say(Tell.said(key));
    }

    /** Height of the upper end of the first of these edges that a piece has, mm. */
    static double upper(Piece piece, EdgeName... names) {
        for (EdgeName name : names) {
            if (piece.has(name)) {
                Path line = piece.edge(name).line();
                return Math.max(line.start().y(), line.end().y());
            }
        }
        return piece.sewLine().box().maxY();
    }

    /** Where the outline of a piece is at a height, on its left or its right, mm. */
    static double edgeAt(Piece piece, double height, boolean left) {
        List<Point> points = piece.cutLine().points();
        double found = Double.NaN;
        for (int i = 0; i < points.size(); i++) {
            Point a = points.get(i);
            Point b = points.get((i + 1) % points.size());
            if (Math.min(a.y(), b.y()) <= height && Math.max(a.y(), b.y()) >= height && a.y() != b.y()) {
                double x = a.x() + (b.x() - a.x()) * (height - a.y()) / (b.y() - a.y());
                found = Double.isNaN(found) ? x : left ? Math.min(found, x) : Math.max(found, x);
            }
        }
        Box box = piece.cutLine().box();
        return !Double.isNaN(found) ? found : left ? box.minX() : box.maxX();
    }
}
