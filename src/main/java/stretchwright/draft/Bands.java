package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Grid;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.ground.Said;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.Dimension.What;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Grain;
import stretchwright.pattern.Mark;
import stretchwright.pattern.MarkName;
import stretchwright.pattern.Notch;
import stretchwright.pattern.NotchName;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;
import stretchwright.pattern.WhichLeg;

/** The straight bands: rectangles folded along their length, stretch round the body. */
final class Bands {
    /** An eyelet stands this far from centre front, mm, clear of the seam and of the lettering on the fold (no source). */
    static final double EYELET_ASIDE = 20;

    /** Drawn length of the mark of an eyelet, mm; the hole is sewn about as long. */
    private static final double EYELET = 8;

    static final Said SOURCE = Tell.said("source.bands");

    private Bands() {}

    /** The half band, from its fold at centre front to its seam at centre back. */
    static Piece waistband(double length, Style style) {
        double join = style.allowance(Seam.Role.WAISTBAND_JOIN);
        List<Edge> edges = rectangle(
                length / 2,
                2 * style.bandHeight(),
                join,
                EdgeName.CENTRE_BACK_END,
                style.allowance(Seam.Role.WAISTBAND_ENDS),
                EdgeName.FOLD,
                0);
        Edge lower = edges.get(0);
        Edge upper = edges.get(2);
        List<Notch> notches = List.of(
                Outline.notch(NotchName.SIDE, lower, lower.length() / 2, Notch.Mark.SINGLE),
                Outline.notch(NotchName.SIDE, upper, upper.length() / 2, Notch.Mark.SINGLE),
                Outline.notch(NotchName.CENTRE_FRONT, lower, 0, Notch.Mark.SINGLE),
                Outline.notch(NotchName.CENTRE_FRONT, upper, upper.length(), Notch.Mark.SINGLE));
        List<Mark> marks = new ArrayList<>(List.of(fold(edges)));
        marks.addAll(inside(length / 2, style));
        return Piece.of(PieceName.of(PieceKind.WAISTBAND), 1, false, true, edges, grain(edges), notches, marks);
    }

    /** Elastic, cord and key pocket on the folded band: the lower half is worn outside, the upper half inside. */
    private static List<Mark> inside(double half, Style style) {
        TopEnd.Band band = style.top().band();
        double height = band.height();
        List<Mark> marks = new ArrayList<>();
        if (band.channel() > 0) {
            double row = height - band.channel();
            marks.add(new Mark(
                    band.elastic().isPresent() ? MarkName.ROW_BELOW_THE_ELASTIC : MarkName.ROW_BELOW_THE_CORD,
                    Mark.Kind.PLACEMENT,
                    Path.of(new Point(0, row), new Point(half, row)).onGrid()));
        }
        if (band.drawstring()) {
            marks.add(eyelet(new Point(EYELET_ASIDE, height - band.channel() / 2), new Point(0, 1)));
        }
        if (band.keyPocket().isPresent()) {
            marks.add(KeyPocket.place((along, up) -> new Point(along, 2 * height - up), half, style));
        }
        return marks;
    }

    static Mark eyelet(Point middle, Point along) {
        return new Mark(
                MarkName.EYELET,
                Mark.Kind.EYELET,
                Path.of(middle.minus(along.times(EYELET / 2)), middle.plus(along.times(EYELET / 2)))
                        .onGrid());
    }

    /** One cuff cut twice; two that differ where the legs' lower ends do. */
    static Reasoned<List<Piece>> cuffs(List<LegSet> legs, double height, Style style) {
        LegSet first = legs.get(0);
        LegSet last = legs.get(legs.size() - 1);
        if (Grid.units(first.length(EdgeName.HEM)) == Grid.units(last.length(EdgeName.HEM))) {
            Piece both = cuff(WhichLeg.BOTH, 2, first.length(EdgeName.HEM), height, style);
            return new Reasoned<>(List.of(both), cuffReasons(both, first, height));
        }
        Piece left = cuff(WhichLeg.LEFT, 1, first.length(EdgeName.HEM), height, style);
        Piece right = cuff(WhichLeg.RIGHT, 1, last.length(EdgeName.HEM), height, style);
        List<Reason> reasons = new ArrayList<>(cuffReasons(left, first, height));
        reasons.addAll(cuffReasons(right, last, height));
        return new Reasoned<>(List.of(left, right), reasons);
    }

    private static List<Reason> cuffReasons(Piece cuff, LegSet leg, double height) {
        return List.of(
                Ruled.of(
                                cuff.edge(EdgeName.LOWER_EDGE).length(),
                                Tell.said("rule.cuff-length"),
                                SOURCE,
                                Inputs.length(leg.its(What.HEM_LENGTH), leg.length(EdgeName.HEM)))
                        .reason(Dimension.of(cuff.name(), What.LENGTH)),
                folded(cuff.name(), height));
    }

    /** A band or cuff folded along its length. */
    static Reason folded(PieceName piece, double height) {
        return Ruled.of(
                        2 * height,
                        Tell.said("rule.folded"),
                        SOURCE,
                        Inputs.style(Tell.said("input.finished-height"), height))
                .reason(Dimension.of(piece, What.HEIGHT));
    }

    private static Piece cuff(WhichLeg leg, int cut, double width, double height, Style style) {
        double end = style.allowance(Seam.Role.CUFF_ENDS);
        List<Edge> edges = rectangle(
                width,
                2 * height,
                style.allowance(Seam.Role.CUFF_JOIN),
                EdgeName.RIGHT_END,
                end,
                EdgeName.LEFT_END,
                end);
        Edge lower = edges.get(0);
        Edge upper = edges.get(2);
        List<Notch> notches = List.of(
                Outline.notch(NotchName.CENTRE, lower, lower.length() / 2, Notch.Mark.SINGLE),
                Outline.notch(NotchName.CENTRE, upper, upper.length() / 2, Notch.Mark.SINGLE));
        return Piece.of(
                PieceName.of(PieceKind.CUFF, leg),
                cut,
                false,
                false,
                edges,
                grain(edges),
                notches,
                List.of(fold(edges)));
    }

    /** A strip cut twice, to be folded along its length; its ends are caught inside the hem. */
    static Piece strap(double length, double width, double lap, Style style) {
        List<Edge> edges = rectangle(
                length,
                2 * width,
                style.allowance(Seam.Role.STRAP_EDGES),
                EdgeName.RIGHT_END,
                lap,
                EdgeName.LEFT_END,
                lap);
        return Piece.of(
                PieceName.of(PieceKind.STRAP), 2, false, false, edges, grain(edges), List.of(), List.of(fold(edges)));
    }

    private static List<Edge> rectangle(
            double width,
            double height,
            double join,
            EdgeName right,
            double rightAllowance,
            EdgeName left,
            double leftAllowance) {
        Point a = Point.ORIGIN;
        Point b = new Point(width, 0).onGrid();
        Point c = new Point(width, height).onGrid();
        Point d = new Point(0, height).onGrid();
        return List.of(
                new Edge(EdgeName.LOWER_EDGE, Path.of(a, b), join),
                new Edge(right, Path.of(b, c), rightAllowance),
                new Edge(EdgeName.UPPER_EDGE, Path.of(c, d), join),
                new Edge(left, Path.of(d, a), leftAllowance));
    }

    private static Grain grain(List<Edge> edges) {
        double middle = edges.get(0).line().end().x() / 2;
        double height = edges.get(1).line().end().y();
        return new Grain(new Point(middle, 0.15 * height).onGrid(), new Point(middle, 0.85 * height).onGrid());
    }

    private static Mark fold(List<Edge> edges) {
        double width = edges.get(0).line().end().x();
        double height = edges.get(1).line().end().y();
        return new Mark(
                MarkName.FOLD_ALONG_HERE,
                Mark.Kind.FOLD,
                Path.of(new Point(0, height / 2), new Point(width, height / 2)).onGrid());
    }
}
