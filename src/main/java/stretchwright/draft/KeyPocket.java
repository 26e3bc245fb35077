package stretchwright.draft;

import java.util.List;
import stretchwright.ground.Part;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
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

/**
 * A pocket for a key on the inner layer of the band: its lower edge is caught in the band's join, its sides are sewn on,
 * its hemmed upper edge is the opening.
 */
final class KeyPocket {
    /** Turned at the opening, mm (common practice, no source). */
    static final double HEM = 10;

    /** The pocket keeps this far from centre front and from the side, mm, where notches and seams are (no source). */
    static final double ASIDE = 10;

    private static final PieceName NAME = PieceName.of(PieceKind.KEY_POCKET);

    private KeyPocket() {}

    /** The widest that fits between centre front and the side, on a half band of this length. */
    static double widest(double half) {
        return half / 2 - 2 * ASIDE;
    }

    static Piece piece(Style style) {
        double width = style.top().band().keyPocket().orElseThrow();
        double depth = style.top().band().pocketDepth();
        double side = style.allowance(Seam.Role.KEY_POCKET);
        Point a = Point.ORIGIN;
        Point b = new Point(width, 0).onGrid();
        Point c = new Point(width, depth).onGrid();
        Point d = new Point(0, depth).onGrid();
        List<Edge> edges = List.of(
                new Edge(EdgeName.LOWER_EDGE, Path.of(a, b), style.allowance(Seam.Role.WAISTBAND_JOIN)),
                new Edge(EdgeName.RIGHT_SIDE, Path.of(b, c), side),
                new Edge(EdgeName.UPPER_EDGE, Path.of(c, d), HEM, true),
                new Edge(EdgeName.LEFT_SIDE, Path.of(d, a), side));
        Grain grain =
                new Grain(new Point(0.2 * width, 0.15 * depth).onGrid(), new Point(0.2 * width, 0.85 * depth).onGrid());
        List<Notch> notches = List.of(Outline.notch(NotchName.KEY_POCKET, edges.get(0), width / 2, Notch.Mark.SINGLE));
        return Piece.of(NAME, 1, false, false, edges, grain, notches, List.of());
    }

    static List<Reason> reasons(TopEnd.Band band) {
        double width = band.keyPocket().orElseThrow();
        return List.of(
                Ruled.of(
                                width,
                                Tell.said("rule.as-asked-for"),
                                Tell.said("source.bands"),
                                Inputs.style(Tell.said("input.key-pocket"), width))
                        .reason(Dimension.of(NAME, What.WIDTH)),
                Ruled.of(
                                band.pocketDepth(),
                                Tell.said("rule.pocket-depth", Part.length(TopEnd.Band.POCKET_ROOM)),
                                Tell.said("source.bands-practice"),
                                Inputs.style(Tell.said("input.band-height"), band.height()),
                                Inputs.style(Tell.said("input.elastic-or-cord"), band.channel()))
                        .reason(Dimension.of(NAME, What.DEPTH)));
    }

    /** Its outline on the half band, three sides: the fourth is the edge of the band. */
    static Mark place(BandFace face, double half, Style style) {
        double width = style.top().band().keyPocket().orElseThrow();
        double depth = style.top().band().pocketDepth();
        double left = (half / 2 - width) / 2;
        return new Mark(
                MarkName.KEY_POCKET,
                Mark.Kind.PLACEMENT,
                Path.of(face.at(left, 0), face.at(left, depth), face.at(left + width, depth), face.at(left + width, 0))
                        .onGrid());
    }
}
