package stretchwright.web.draft;

import java.util.List;
import stretchwright.ground.Path;
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
}
