package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Part;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.Dimension.What;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Mark;
import stretchwright.pattern.MarkName;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;

/** The legs' own top turned down over an elastic: no band is cut, the waist edge is the fold. */
final class Casing {
    /** Beyond the row that closes the casing, mm: the two needle rows lie over the raw edge (common practice). */
    static final double BEYOND_ROW = 6;

    private Casing() {}

    /** Whether a mark follows the waist edge and is drawn anew where that edge is cut. */
    static boolean follows(Mark mark) {
        return mark.name() == MarkName.FOLD_THE_CASING_DOWN_ALONG_HERE
                || mark.name() == MarkName.ROW_THAT_CLOSES_THE_CASING;
    }

    /** What is turned down at the waist edge, mm. */
    static double turn(Style style) {
        return style.bandHeight() + BEYOND_ROW;
    }

    /** Why so much is turned down. */
    static List<Reason> reasons(List<LegSet> legs, Style style) {
        List<Reason> out = new ArrayList<>();
        for (LegSet set : legs) {
            Piece leg = set.with(EdgeName.WAIST_EDGE);
            out.add(Ruled.of(
                            leg.edge(EdgeName.WAIST_EDGE).allowance(),
                            Tell.said("rule.turned-down", Part.length(BEYOND_ROW)),
                            Tell.said("source.bands-practice"),
                            Inputs.style(Tell.said("input.casing-height"), style.bandHeight()))
                    .reason(Dimension.of(leg.name(), What.TURNED_DOWN_AT_THE_WAIST)));
        }
        return out;
    }

    /** The waist edge of a leg: where a band is sewn on, or the fold of a casing. */
    static Edge waistEdge(Path line, Style style) {
        return style.top().band().shape() == TopEnd.Band.Shape.CASING
                ? new Edge(EdgeName.WAIST_EDGE, line, turn(style), true)
                : new Edge(EdgeName.WAIST_EDGE, line, style.allowance(Seam.Role.WAISTBAND_JOIN));
    }

    /** The leg with the casing's fold, its row and the eyelet of a cord drawn. */
    static Piece marked(Piece leg, Style style) {
        Piece lined = lined(leg, style);
        if (style.top().band().shape() != TopEnd.Band.Shape.CASING
                || !style.top().band().drawstring()) {
            return lined;
        }
        List<Mark> marks = new ArrayList<>(lined.marks());
        Path edge = leg.edge(EdgeName.WAIST_EDGE).line();
        double along = edge.length() - Bands.EYELET_ASIDE;
        Point inwards = edge.directionAt(along).left();
        Point middle = edge.at(along).plus(inwards.times(style.bandHeight() / 2));
        marks.add(Bands.eyelet(middle, inwards));
        return lined.with(lined.notches(), marks);
    }

    /** A leg, or a part of one, with the fold and the row of its own stretch of the waist edge. */
    static Piece lined(Piece leg, Style style) {
        if (style.top().band().shape() != TopEnd.Band.Shape.CASING) {
            return leg;
        }
        List<Mark> marks = new ArrayList<>(leg.marks());
        for (Edge edge : leg.edges()) {
            if (edge.name().isWaist()) {
                marks.add(new Mark(MarkName.FOLD_THE_CASING_DOWN_ALONG_HERE, Mark.Kind.FOLD, edge.line()));
                marks.add(new Mark(
                        MarkName.ROW_THAT_CLOSES_THE_CASING, Mark.Kind.PLACEMENT, inside(edge, style.bandHeight())));
            }
        }
        return leg.with(leg.notches(), marks);
    }

    private static Path inside(Edge edge, double away) {
        List<Point> points = new ArrayList<>();
        int parts = 20;
        for (int i = 0; i <= parts; i++) {
            double along = edge.length() * i / parts;
            points.add(edge.line()
                    .at(along)
                    .plus(edge.line().directionAt(along).left().times(away)));
        }
        return new Path(points).onGrid();
    }
}
