package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.ground.Grid;
import stretchwright.ground.Part;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.ground.Said;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.Dimension.What;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Grain;
import stretchwright.pattern.Level;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Notch;
import stretchwright.pattern.NotchName;
import stretchwright.pattern.Notion;
import stretchwright.pattern.NotionName;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Reason.Input;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;
import stretchwright.pattern.WhichLeg;

/**
 * The cover of a whole boot: two halves, cut as the boot is seen from the side, joined in front and behind, and hung
 * on the leg's edge over the collar. The lower edge runs round the sole with an elastic in its turned hem; below it is
 * open for blade or plate, and the cover can be replaced when the ice has worn it. Maths: docs/maths/draft.md, hems.
 */
final class Cover {
    /** Allowance at the sole that holds the elastic, mm (makers' practice, two tutorials: makers' troubles H64). */
    static final double ELASTIC_TURN = 12;

    /** Width of that elastic, mm: 6 to 10 (same). */
    static final double ELASTIC_WIDTH = 8;

    /** The elastic is cut shorter than the edge it gathers, so that the hem holds under the sole's edge [C]. */
    static final double ELASTIC_SHARE = 0.90;

    /** Overlapped to a ring, mm (common practice, no source). */
    private static final double OVERLAP = 15;

    private static final Said SOURCE = Tell.said("source.covers");

    private Cover() {}

    static boolean wanted(Style style) {
        return style.leg() == Style.Leg.OVER_BOOT && style.lower().hem() == LowerEnd.Hem.WHOLE_BOOT;
    }

    /** Finished height from the leg's edge down to the hem above the sole, on the flat piece. */
    static double height(Order order) {
        Boot boot = order.boot().orElseThrow();
        double body =
                boot.ankleToTop() - LowerEnd.LUNGE + boot.sole().ankleToSole().orElseThrow() - HemHeights.ABOVE_SOLE;
        return body * (1 - order.reductions().along());
    }

    /** Half the way round the sole, on the flat piece: the finished hem of this garment, with its ease. */
    static double soleEdge(Order order) {
        return order.boot().orElseThrow().sole().around()
                        / 2
                        * (1 - order.reductions().hem())
                + HemWidths.ease(order) / 2;
    }

    /** Flat length of the loop round heel and instep. */
    private static double heelLoop(Order order) {
        return order.boot().orElseThrow().heelGirth() * (1 - order.reductions().hem());
    }

    /** Height of the finished hem on the flat piece, 0 at the bare foot's floor. */
    private static double hemHeight(Order order) {
        double sole = order.boot().orElseThrow().sole().ankleToSole().orElseThrow();
        double body = order.body().mm(Measure.ANKLE_BONE_HEIGHT) - sole + HemHeights.ABOVE_SOLE;
        return body * (1 - order.reductions().along());
    }

    static List<Piece> pieces(Order order, List<Piece> legs) {
        double first = legs.get(0).edge(EdgeName.HEM).length();
        double last = legs.get(legs.size() - 1).edge(EdgeName.HEM).length();
        if (Grid.units(first) == Grid.units(last)) {
            return List.of(piece(WhichLeg.BOTH, 4, first / 2, order));
        }
        return List.of(piece(WhichLeg.LEFT, 2, first / 2, order), piece(WhichLeg.RIGHT, 2, last / 2, order));
    }

    private static Piece piece(WhichLeg leg, int cut, double top, Order order) {
        double height = Grid.snap(height(order));
        double sole = soleEdge(order);
        Style style = order.style();
        double seam = style.allowance(Seam.Role.COVER_SEAM);
        Point heel = Point.ORIGIN;
        Point toe = new Point(-sole, 0).onGrid();
        Point collarBack = new Point(0, height).onGrid();
        Point collarFront = new Point(-top, height).onGrid();
        double turn = style.allowances().getOrDefault(Seam.Role.HEM, ELASTIC_TURN);
        List<Edge> edges = List.of(
                new Edge(EdgeName.LOWER_EDGE, Path.of(toe, heel), Math.max(turn, ELASTIC_TURN)),
                new Edge(EdgeName.BACK_EDGE, Path.of(heel, collarBack), seam),
                new Edge(EdgeName.UPPER_EDGE, Path.of(collarBack, collarFront), style.allowance(Seam.Role.COVER_JOIN)),
                new Edge(EdgeName.FRONT_EDGE, CoverFront.between(collarFront, toe, heelLoop(order) / 2), seam));
        List<Notch> notches = new ArrayList<>();
        notches.add(middle(NotchName.CENTRE, edges.get(0), Notch.Mark.SINGLE));
        notches.add(middle(NotchName.CENTRE, edges.get(2), Notch.Mark.SINGLE));
        notches.add(middle(NotchName.COVER_FRONT, edges.get(3), Notch.Mark.SINGLE));
        notches.add(middle(NotchName.COVER_BACK, edges.get(1), Notch.Mark.DOUBLE));
        double x = -top / 2;
        Grain grain = new Grain(new Point(x, 0.15 * height).onGrid(), new Point(x, 0.85 * height).onGrid());
        return Piece.of(PieceName.of(PieceKind.BOOT_COVER, leg), cut, true, false, edges, grain, notches, List.of());
    }

    private static Notch middle(NotchName name, Edge edge, Notch.Mark mark) {
        return Outline.notch(name, edge, edge.length() / 2, mark);
    }

    static Level level(Order order, Piece cover, WhichLeg leg) {
        return new Level(
                Level.Name.HEM,
                hemHeight(order),
                2 * cover.edge(EdgeName.LOWER_EDGE).length(),
                leg);
    }

    static Notion elastic(Piece cover) {
        double ring = 2 * cover.edge(EdgeName.LOWER_EDGE).length();
        double cut = Grid.snap(ring * ELASTIC_SHARE + OVERLAP);
        return new Notion(
                NotionName.SOLE_ELASTIC,
                cover.cut() / 2,
                ELASTIC_WIDTH,
                cut,
                ring,
                OVERLAP,
                0,
                cover.name(),
                EdgeName.LOWER_EDGE);
    }

    static List<Reason> reasons(Order order, Piece cover, PieceName leg) {
        Boot boot = order.boot().orElseThrow();
        Boot.Sole sole = boot.sole();
        double upper = cover.edge(EdgeName.UPPER_EDGE).length();
        Dimension hem = Dimension.of(leg, What.HEM_LENGTH);
        return List.of(
                Ruled.of(
                                cover.edge(EdgeName.BACK_EDGE).length(),
                                Tell.said(
                                        "rule.cover-height",
                                        Part.length(LowerEnd.LUNGE),
                                        Part.length(HemHeights.ABOVE_SOLE)),
                                SOURCE,
                                Inputs.toTop(boot),
                                Inputs.measured(
                                        Tell.said("input.ankle-to-sole"),
                                        sole.ankleToSole().orElseThrow()),
                                order.along())
                        .reason(Dimension.of(cover.name(), What.HEIGHT)),
                lower(order, cover).reason(Dimension.of(cover.name(), What.LOWER_EDGE)),
                Ruled.of(
                                CoverFront.nearest(
                                        cover.edge(EdgeName.FRONT_EDGE).line(), Point.ORIGIN),
                                Tell.said("rule.cover-heel"),
                                SOURCE,
                                Inputs.measured(Tell.said("input.boot-heel-girth"), boot.heelGirth()),
                                order.hem())
                        .reason(Dimension.of(cover.name(), What.HEEL_TO_INSTEP)),
                Ruled.of(upper, Tell.said("rule.cover-upper"), SOURCE, new Input(hem.said(), 2 * upper, "mm", hem))
                        .reason(Dimension.of(cover.name(), What.UPPER_EDGE)));
    }

    private static Ruled lower(Order order, Piece cover) {
        Boot.Sole sole = order.boot().orElseThrow().sole();
        Ruled plain = Ruled.of(
                cover.edge(EdgeName.LOWER_EDGE).length(),
                Tell.said("rule.cover-lower"),
                SOURCE,
                Inputs.measured(Tell.said("input.sole-length"), sole.length().orElseThrow()),
                Inputs.measured(Tell.said("input.sole-width"), sole.width().orElseThrow()),
                order.hem());
        return HemWidths.ease(order) == 0 ? plain : plain.with(HemWidths.eased(HemWidths.ease(order)));
    }
}
