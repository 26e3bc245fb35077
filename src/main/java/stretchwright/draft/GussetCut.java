package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import stretchwright.ground.Part;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.ground.Roots;
import stretchwright.ground.Said;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.Dimension.What;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Grain;
import stretchwright.pattern.Mark;
import stretchwright.pattern.Notch;
import stretchwright.pattern.NotchName;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Reason.Input;
import stretchwright.pattern.Seam;
import stretchwright.pattern.SeamKind;
import stretchwright.pattern.SeamName;
import stretchwright.pattern.Style;

/**
 * The diamond at the crotch: takes the corner off the front and the back of a leg and draws the kite that fills the
 * hole, its edges exactly as long as the cuts.
 *
 * <p>Of the crotch curve {@link #reach} goes, front and back each, of both inseams the same length {@code taken}; each cut
 * is straight. A kite of the asked length L and width W whose edges equal the cuts exists where the front and the back cut,
 * each less half the width at right angles, add up to L: one equation for {@code taken}. The hole is 2 x taken wide, the
 * kite W: the difference is the room. The hole is longer than the kite, by {@link #shortening}, and the crotch curve is
 * drafted so much longer beforehand: from waist to waist the seam keeps its target. Docs: docs/maths/draft.md.
 */
final class GussetCut {
    /** Of half the gusset's width, what a right-angled hole would give up (design value, no source). */
    private static final double REPLACED = 0.5;

    /** The crotch notches sit at this share of what is left of the front curve, from the gusset. */
    private static final double NOTCH_SHARE = 0.35;

    private static final double NOTCH_ROOM = 15;

    private static final PieceName GUSSET = PieceName.of(PieceKind.GUSSET);

    private static final Said SOURCE = Tell.said("source.parts");

    private GussetCut() {}

    /** How far along each crotch curve the hole reaches from the crotch point, mm. */
    static double reach(Parts.Gusset g) {
        double half = g.width() / 2;
        return Math.sqrt(g.length() * g.length() / 4 + half * half * (1 - REPLACED * REPLACED));
    }

    /** By how much the gusset is shorter than the hole it fills; the crotch curves are drafted longer by it, mm. */
    static double shortening(Style style) {
        return style.parts().gusset().map(g -> 2 * reach(g) - g.length()).orElse(0.0);
    }

    /** What goes off each inseam, mm; empty where no such kite exists. */
    static OptionalDouble taken(Piece leg, Parts.Gusset g) {
        double most = Math.min(
                leg.edge(EdgeName.FRONT_INSEAM).length(),
                leg.edge(EdgeName.BACK_INSEAM).length());
        return Roots.between(
                b -> along(cut(leg, true, g, b), g) + along(cut(leg, false, g, b), g) - g.length(), 0, most / 2);
    }

    private static double along(double cut, Parts.Gusset g) {
        double half = g.width() / 2;
        return cut <= half ? cut - half : Math.sqrt(cut * cut - half * half);
    }

    private static double cut(Piece leg, boolean front, Parts.Gusset g, double taken) {
        Path crotch =
                leg.edge(front ? EdgeName.FRONT_CROTCH : EdgeName.BACK_CROTCH).line();
        Path inseam =
                leg.edge(front ? EdgeName.FRONT_INSEAM : EdgeName.BACK_INSEAM).line();
        // as seen from the crotch point
        Path upwards = front ? crotch.reversed() : crotch;
        Path downwards = front ? inseam : inseam.reversed();
        return upwards.at(reach(g)).distance(downwards.at(taken));
    }

    /** The leg without its two corners at the crotch. */
    static Piece leg(Piece leg, Parts.Gusset g, double taken, Style style) {
        double reach = reach(g);
        double allowance = style.allowance(Seam.Role.GUSSET);
        Path backCrotch =
                Outline.after(leg.edge(EdgeName.BACK_CROTCH).line(), reach).onGrid();
        Path frontInseam =
                Outline.after(leg.edge(EdgeName.FRONT_INSEAM).line(), taken).onGrid();
        List<Edge> edges = new ArrayList<>();
        for (Edge e : leg.edges()) {
            Path line = e.line();
            switch (e.name()) {
                case BACK_INSEAM -> {
                    Path rest = Outline.before(line, e.length() - taken).onGrid();
                    edges.add(new Edge(e.name(), rest, e.allowance()));
                    edges.add(new Edge(EdgeName.BACK_GUSSET_EDGE, Path.of(rest.end(), backCrotch.start()), allowance));
                }
                case BACK_CROTCH -> edges.add(new Edge(e.name(), backCrotch, e.allowance()));
                case FRONT_CROTCH -> {
                    Path rest = Outline.before(line, e.length() - reach).onGrid();
                    edges.add(new Edge(e.name(), rest, e.allowance()));
                    edges.add(
                            new Edge(EdgeName.FRONT_GUSSET_EDGE, Path.of(rest.end(), frontInseam.start()), allowance));
                }
                case FRONT_INSEAM -> edges.add(new Edge(e.name(), frontInseam, e.allowance()));
                default -> edges.add(e);
            }
        }
        return Darts.cutAcross(Piece.of(
                leg.name(),
                leg.cut(),
                leg.mirrored(),
                leg.onFold(),
                edges,
                leg.grain(),
                notches(leg, edges, taken),
                marks(leg, edges)));
    }

    /** The levels end at the new edges; what is marked at the top stays. */
    private static List<Mark> marks(Piece leg, List<Edge> edges) {
        List<Mark> out = new ArrayList<>(Outline.levels(leg.marks(), edges));
        leg.marks().stream().filter(m -> m.kind() != Mark.Kind.LEVEL).forEach(out::add);
        return out;
    }

    /** Those of the inseams and the hip line keep their places, those of the crotch move up with what is left of the rises. */
    private static List<Notch> notches(Piece leg, List<Edge> edges, double taken) {
        List<Notch> out = new ArrayList<>();
        for (Notch n : leg.notches()) {
            Edge edge = Outline.edge(edges, n.edge());
            switch (n.edge()) {
                case FRONT_CROTCH, BACK_CROTCH -> {}
                case FRONT_INSEAM -> keep(n, edge, n.along() - taken, out);
                case BACK_INSEAM -> keep(n, edge, n.along(), out);
                default -> out.add(n);
            }
        }
        Edge front = Outline.edge(edges, EdgeName.FRONT_CROTCH);
        Edge back = Outline.edge(edges, EdgeName.BACK_CROTCH);
        OptionalDouble frontHip = hip(leg, front);
        OptionalDouble backHip = hip(leg, back);
        double crotch = Walk.besideHip(
                NOTCH_SHARE * front.length(),
                DoubleStream.concat(frontHip.stream(), backHip.stream()).toArray());
        out.addAll(Walk.rise(front, frontHip, crotch));
        out.addAll(Walk.rise(back, backHip, crotch));
        out.add(middle(NotchName.FRONT, Outline.edge(edges, EdgeName.FRONT_GUSSET_EDGE), Notch.Mark.SINGLE));
        out.add(middle(NotchName.BACK, Outline.edge(edges, EdgeName.BACK_GUSSET_EDGE), Notch.Mark.DOUBLE));
        return out;
    }

    /** How far above the gusset the hip line's notch stands, mm: its distance from the waist stays. */
    private static OptionalDouble hip(Piece leg, Edge rest) {
        return leg.notches().stream()
                .filter(n -> n.name() == NotchName.HIP && n.edge() == rest.name())
                .mapToDouble(n -> n.edge() == EdgeName.FRONT_CROTCH
                        ? rest.length() - n.along()
                        : rest.length() - leg.edge(n.edge()).length() + n.along())
                .findFirst();
    }

    private static void keep(Notch n, Edge edge, double along, List<Notch> out) {
        if (along > NOTCH_ROOM && along < edge.length() - NOTCH_ROOM) {
            out.add(Outline.notch(n.name(), edge, along, n.mark()));
        }
    }

    private static Notch middle(NotchName name, Edge edge, Notch.Mark mark) {
        return Outline.notch(name, edge, edge.length() / 2, mark);
    }

    /** The kite, front up, outside of the cloth up: the left leg lies to the right. Cut once, along the body's length. */
    static Piece gusset(Piece left, Piece right, Parts.Gusset g, Style style) {
        double half = g.width() / 2;
        Point back = Point.ORIGIN;
        Point front = new Point(0, g.length());
        Point onLeft =
                new Point(half, along(left.edge(EdgeName.BACK_GUSSET_EDGE).length(), g)).onGrid();
        Point onRight =
                new Point(-half, along(right.edge(EdgeName.BACK_GUSSET_EDGE).length(), g)).onGrid();
        double allowance = style.allowance(Seam.Role.GUSSET);
        List<Edge> edges = List.of(
                new Edge(EdgeName.LEFT_BACK_EDGE, Path.of(back, onLeft), allowance),
                new Edge(EdgeName.LEFT_FRONT_EDGE, Path.of(onLeft, front), allowance),
                new Edge(EdgeName.RIGHT_FRONT_EDGE, Path.of(front, onRight), allowance),
                new Edge(EdgeName.RIGHT_BACK_EDGE, Path.of(onRight, back), allowance));
        List<Notch> notches = List.of(
                middle(NotchName.BACK, edges.get(0), Notch.Mark.DOUBLE),
                middle(NotchName.FRONT, edges.get(1), Notch.Mark.SINGLE),
                middle(NotchName.FRONT, edges.get(2), Notch.Mark.SINGLE),
                middle(NotchName.BACK, edges.get(3), Notch.Mark.DOUBLE));
        Grain grain = new Grain(new Point(0, 0.62 * g.length()).onGrid(), new Point(0, 0.9 * g.length()).onGrid());
        return Piece.of(GUSSET, 1, false, false, edges, grain, notches, List.of());
    }

    static List<Reason> reasons(Parts.Gusset g) {
        return List.of(
                Ruled.of(g.length(), Tell.said("rule.as-asked"), SOURCE, length(g, Reason.Origin.STYLE))
                        .reason(Dimension.of(GUSSET, What.LENGTH)),
                Ruled.of(g.width(), Tell.said("rule.as-asked"), SOURCE, width(g, Reason.Origin.STYLE))
                        .reason(Dimension.of(GUSSET, What.WIDTH)));
    }

    private static Input length(Parts.Gusset g, Reason.From from) {
        return new Input(Tell.said("input.gusset-length"), g.length(), "mm", from);
    }

    private static Input width(Parts.Gusset g, Reason.From from) {
        return new Input(Tell.said("input.gusset-width"), g.width(), "mm", from);
    }

    /** What the gusset does to a leg of this name. */
    static List<Reason> reasons(PieceName leg, Parts.Gusset g, double taken) {
        Input length = length(g, Dimension.of(GUSSET, What.LENGTH));
        Input width = width(g, Dimension.of(GUSSET, What.WIDTH));
        Dimension ofInseam = Dimension.of(leg, What.GUSSET_TAKES_OF_EACH_INSEAM);
        Input gone = new Input(Tell.said("input.taken-of-inseam"), taken, "mm", ofInseam);
        return List.of(
                Ruled.of(
                                reach(g),
                                Tell.said("rule.gusset-of-curve", Part.number(1 - REPLACED * REPLACED, 2)),
                                SOURCE,
                                length,
                                width)
                        .reason(Dimension.of(leg, What.GUSSET_TAKES_OF_EACH_CROTCH_CURVE)),
                Ruled.of(taken, Tell.said("rule.gusset-of-inseam"), SOURCE, length, width)
                        .reason(ofInseam),
                Ruled.of(g.width() - 2 * taken, Tell.said("rule.gusset-room"), SOURCE, width, gone)
                        .reason(Dimension.of(leg, What.ROOM_FROM_THE_GUSSET)));
    }

    /** The four seams: each leg's front and back cut on the kite's edge of that side. */
    static List<Seam> seams(LegSet left, LegSet right, Piece gusset, Style style) {
        List<Seam> out = new ArrayList<>();
        out.add(seam(
                left, EdgeName.FRONT_GUSSET_EDGE, gusset, EdgeName.LEFT_FRONT_EDGE, SeamKind.GUSSET_LEFT_FRONT, style));
        out.add(seam(
                left, EdgeName.BACK_GUSSET_EDGE, gusset, EdgeName.LEFT_BACK_EDGE, SeamKind.GUSSET_LEFT_BACK, style));
        out.add(seam(
                right,
                EdgeName.FRONT_GUSSET_EDGE,
                gusset,
                EdgeName.RIGHT_FRONT_EDGE,
                SeamKind.GUSSET_RIGHT_FRONT,
                style));
        out.add(seam(
                right, EdgeName.BACK_GUSSET_EDGE, gusset, EdgeName.RIGHT_BACK_EDGE, SeamKind.GUSSET_RIGHT_BACK, style));
        return out;
    }

    private static Seam seam(LegSet leg, EdgeName cut, Piece gusset, EdgeName edge, SeamKind kind, Style style) {
        Seam.Side one = leg.side(cut);
        Seam.Side other = new Seam.Side(GUSSET, edge, gusset.edge(edge).length());
        double ease = other.length() - one.length();
        return new Seam(
                Seam.Role.GUSSET, SeamName.of(kind), List.of(one, other), ease, style.allowance(Seam.Role.GUSSET), 1);
    }
}
