package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import stretchwright.ground.Part;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.ground.Said;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.Dimension.What;
import stretchwright.pattern.Edge;
import stretchwright.pattern.Grain;
import stretchwright.pattern.Mark;
import stretchwright.pattern.Notch;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Reason.Input;
import stretchwright.pattern.Seam;
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
    static final String FRONT = "front gusset edge";
    static final String BACK = "back gusset edge";

    /** Of half the gusset's width, what a right-angled hole would give up (design value, no source). */
    private static final double REPLACED = 0.5;

    /** The crotch notches sit at this share of what is left of the front curve, from the gusset. */
    private static final double NOTCH_SHARE = 0.35;

    private static final double NOTCH_ROOM = 15;

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
                leg.edge("front inseam").length(), leg.edge("back inseam").length());
        return Roots.between(
                b -> along(cut(leg, true, g, b), g) + along(cut(leg, false, g, b), g) - g.length(), 0, most / 2);
    }

    private static double along(double cut, Parts.Gusset g) {
        double half = g.width() / 2;
        return cut <= half ? cut - half : Math.sqrt(cut * cut - half * half);
    }

    private static double cut(Piece leg, boolean front, Parts.Gusset g, double taken) {
        Path crotch = fromCrotch(leg, front, "crotch");
        Path inseam = fromCrotch(leg, front, "inseam");
        return crotch.at(reach(g)).distance(inseam.at(taken));
    }

    /** An edge as seen from the crotch point. */
    private static Path fromCrotch(Piece leg, boolean front, String which) {
        Path line = leg.edge((front ? "front " : "back ") + which).line();
        return front == which.equals("crotch") ? line.reversed() : line;
    }

    /** The leg without its two corners at the crotch. */
    static Piece leg(Piece leg, Parts.Gusset g, double taken, Style style) {
        double reach = reach(g);
        double allowance = style.allowance(Seam.Role.GUSSET);
        Path backCrotch = Outline.after(leg.edge("back crotch").line(), reach).onGrid();
        Path frontInseam = Outline.after(leg.edge("front inseam").line(), taken).onGrid();
        List<Edge> edges = new ArrayList<>();
        for (Edge e : leg.edges()) {
            Path line = e.line();
            switch (e.name()) {
                case "back inseam" -> {
                    Path rest = Outline.before(line, e.length() - taken).onGrid();
                    edges.add(new Edge(e.name(), rest, e.allowance()));
                    edges.add(new Edge(BACK, Path.of(rest.end(), backCrotch.start()), allowance));
                }
                case "back crotch" -> edges.add(new Edge(e.name(), backCrotch, e.allowance()));
                case "front crotch" -> {
                    Path rest = Outline.before(line, e.length() - reach).onGrid();
                    edges.add(new Edge(e.name(), rest, e.allowance()));
                    edges.add(new Edge(FRONT, Path.of(rest.end(), frontInseam.start()), allowance));
                }
                case "front inseam" -> edges.add(new Edge(e.name(), frontInseam, e.allowance()));
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

    /** Those of the inseams keep their places, those of the rises move up with what is left of them. */
    private static List<Notch> notches(Piece leg, List<Edge> edges, double taken) {
        List<Notch> out = new ArrayList<>();
        for (Notch n : leg.notches()) {
            Edge edge = Outline.edge(edges, n.edge());
            switch (n.edge()) {
                case "front crotch", "back crotch" -> {
                    double from =
                            NOTCH_SHARE * Outline.edge(edges, "front crotch").length();
                    double along = n.edge().startsWith("front") ? edge.length() - from : from;
                    out.add(Outline.notch(n.name(), edge, along, n.mark()));
                }
                case "front inseam" -> keep(n, edge, n.along() - taken, out);
                case "back inseam" -> keep(n, edge, n.along(), out);
                default -> out.add(n);
            }
        }
        out.add(middle("front", Outline.edge(edges, FRONT), Notch.Mark.SINGLE));
        out.add(middle("back", Outline.edge(edges, BACK), Notch.Mark.DOUBLE));
        return out;
    }

    private static void keep(Notch n, Edge edge, double along, List<Notch> out) {
        if (along > NOTCH_ROOM && along < edge.length() - NOTCH_ROOM) {
            out.add(Outline.notch(n.name(), edge, along, n.mark()));
        }
    }

    private static Notch middle(String name, Edge edge, Notch.Mark mark) {
        return Outline.notch(name, edge, edge.length() / 2, mark);
    }

    /** The kite, front up, outside of the cloth up: the left leg lies to the right. Cut once, along the body's length. */
    static Piece gusset(Piece left, Piece right, Parts.Gusset g, Style style) {
        double half = g.width() / 2;
        Point back = Point.ORIGIN;
        Point front = new Point(0, g.length());
        Point onLeft = new Point(half, along(left.edge(BACK).length(), g)).onGrid();
        Point onRight = new Point(-half, along(right.edge(BACK).length(), g)).onGrid();
        double allowance = style.allowance(Seam.Role.GUSSET);
        List<Edge> edges = List.of(
                new Edge("left back edge", Path.of(back, onLeft), allowance),
                new Edge("left front edge", Path.of(onLeft, front), allowance),
                new Edge("right front edge", Path.of(front, onRight), allowance),
                new Edge("right back edge", Path.of(onRight, back), allowance));
        List<Notch> notches = List.of(
                middle("back", edges.get(0), Notch.Mark.DOUBLE),
                middle("front", edges.get(1), Notch.Mark.SINGLE),
                middle("front", edges.get(2), Notch.Mark.SINGLE),
                middle("back", edges.get(3), Notch.Mark.DOUBLE));
        Grain grain = new Grain(new Point(0, 0.62 * g.length()).onGrid(), new Point(0, 0.9 * g.length()).onGrid());
        return Piece.of("gusset", 1, false, false, edges, grain, notches, List.of());
    }

    static List<Reason> reasons(Parts.Gusset g) {
        return List.of(
                Ruled.of(g.length(), Tell.said("rule.as-asked"), SOURCE, length(g, Reason.Origin.STYLE))
                        .reason(new Dimension("gusset", What.LENGTH)),
                Ruled.of(g.width(), Tell.said("rule.as-asked"), SOURCE, width(g, Reason.Origin.STYLE))
                        .reason(new Dimension("gusset", What.WIDTH)));
    }

    private static Input length(Parts.Gusset g, Reason.From from) {
        return new Input(Tell.said("input.gusset-length"), g.length(), "mm", from);
    }

    private static Input width(Parts.Gusset g, Reason.From from) {
        return new Input(Tell.said("input.gusset-width"), g.width(), "mm", from);
    }

    /** What the gusset does to a leg of this name. */
    static List<Reason> reasons(String leg, Parts.Gusset g, double taken) {
        Input length = length(g, new Dimension("gusset", What.LENGTH));
        Input width = width(g, new Dimension("gusset", What.WIDTH));
        Dimension ofInseam = new Dimension(leg, What.GUSSET_TAKES_OF_EACH_INSEAM);
        Input gone = new Input(Tell.said("input.taken-of-inseam"), taken, "mm", ofInseam);
        return List.of(
                Ruled.of(
                                reach(g),
                                Tell.said("rule.gusset-of-curve", Part.number(1 - REPLACED * REPLACED, 2)),
                                SOURCE,
                                length,
                                width)
                        .reason(new Dimension(leg, What.GUSSET_TAKES_OF_EACH_CROTCH_CURVE)),
                Ruled.of(taken, Tell.said("rule.gusset-of-inseam"), SOURCE, length, width)
                        .reason(ofInseam),
                Ruled.of(g.width() - 2 * taken, Tell.said("rule.gusset-room"), SOURCE, width, gone)
                        .reason(new Dimension(leg, What.ROOM_FROM_THE_GUSSET)));
    }

    /** The four seams: each leg's front and back cut on the kite's edge of that side. */
    static List<Seam> seams(LegSet left, LegSet right, Piece gusset, Style style) {
        List<Seam> out = new ArrayList<>();
        for (String side : List.of("left", "right")) {
            LegSet leg = side.equals("left") ? left : right;
            for (String end : List.of("front", "back")) {
                Seam.Side one = leg.side(end + " gusset edge");
                String edge = side + " " + end + " edge";
                Seam.Side other =
                        new Seam.Side("gusset", edge, gusset.edge(edge).length());
                out.add(new Seam(
                        Seam.Role.GUSSET,
                        "gusset " + side + " " + end,
                        List.of(one, other),
                        other.length() - one.length(),
                        style.allowance(Seam.Role.GUSSET),
                        1));
            }
        }
        return out;
    }
}
