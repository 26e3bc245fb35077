package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Part;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.ground.Said;
import stretchwright.pattern.Dimension.What;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Mark;
import stretchwright.pattern.MarkName;
import stretchwright.pattern.Notch;
import stretchwright.pattern.NotchName;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Reason.Input;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;

/**
 * One dart in the back half of a leg's waist edge: it takes in what the slanted centre seams leave over.
 *
 * <p>In: a leg with one waist edge and the length a band wants of it. Out: the leg with the dart's two legs as edges, or
 * unchanged where there is next to nothing to take in. Promise: the dart's legs are equally long, and the waist edge
 * meets both square, so that it runs smooth when the dart is closed. The rules: docs/maths/draft.md, "Backs".
 */
final class Darts {
    /** The tip ends this far above the hip line, mm: on the seat's fullest part it would stand up (common practice). */
    static final double TIP_ABOVE_HIP = 40;

    /** Where hip line and waist are near, at least this share of the way between them stays free (common practice). */
    static final double TIP_SHARE = 0.30;

    /** At most this share of half the hip goes into one dart: more stands up at the tip (common practice, no source). */
    static final double MOST_OF_HIP = 0.08;

    /** And at most this share of the dart's own length: about 20 degrees at the tip (common practice, no source). */
    static final double MOST_OF_LENGTH = 0.35;

    /** Less than this, mm, the band takes in unseen: no dart is drawn (common practice, no source). */
    static final double LEAST = 8;

    private static final Said SOURCE = Tell.said("source.backs-practice");

    private Darts() {}

    /** Size and place of a dart, mm. */
    record Dart(double surplus, double intake, double length, double tipAboveHip) {
        boolean drawn() {
            return intake >= LEAST;
        }
    }

    /** What the dart of a leg is, whether it is drawn or too small. */
    static Dart of(Path edge, double hipHeight, double hip, double band) {
        double surplus = edge.length() - band / 2;
        Point mouth = edge.at(mouth(edge));
        double way = mouth.y() - hipHeight;
        double above = Math.max(TIP_ABOVE_HIP, TIP_SHARE * way);
        double length = Math.max(0, way - above);
        double intake = Math.min(surplus, Math.min(MOST_OF_HIP * hip, MOST_OF_LENGTH * length));
        return new Dart(surplus, intake, length, above);
    }

    /** Halfway between centre back and the side line. */
    private static double mouth(Path edge) {
        List<Point> points = edge.points();
        double along = 0;
        for (int i = 1; i < points.size() && points.get(i).x() > 0; i++) {
            along += points.get(i - 1).distance(points.get(i));
        }
        return along / 2;
    }

    static Piece into(Piece leg, Dart dart, Style style) {
        if (!dart.drawn()) {
            return leg;
        }
        Edge waist = leg.edge(EdgeName.WAIST_EDGE);
        Path line = waist.line();
        double at = mouth(line);
        Point middle = line.at(at);
        Point up = line.directionAt(at).left().times(-1);
        Point tip = middle.minus(up.times(dart.length())).onGrid();
        double half = Math.toDegrees(Math.asin(dart.intake() / 2 / dart.length()));
        Point toBack = up.turned(-half);
        Point toFront = up.turned(half);
        Point back = tip.plus(toBack.times(dart.length())).onGrid();
        Point front = tip.plus(toFront.times(dart.length())).onGrid();
        Path backLine = Cubic.between(line.start(), line.directionAt(0), back, toBack.left());
        Path frontLine = Cubic.between(front, toFront.left(), line.end(), line.directionAt(line.length()));
        Point peak = tip.plus(up.times(dart.length() / Math.cos(Math.toRadians(half))));

        double sewn = style.allowance(Seam.Role.DART);
        Edge backEdge = new Edge(EdgeName.BACK_WAIST_EDGE, backLine, waist.allowance(), waist.turned());
        Edge frontEdge = new Edge(EdgeName.WAIST_EDGE, frontLine, waist.allowance(), waist.turned());
        List<Edge> edges = replaced(
                leg.edges(),
                List.of(
                        backEdge,
                        new Edge(EdgeName.DART_BACK_LEG, Path.of(back, tip), sewn),
                        new Edge(EdgeName.DART_FRONT_LEG, Path.of(tip, front), sewn),
                        frontEdge));
        List<Edge> outline = replaced(
                leg.edges(),
                List.of(
                        backEdge,
                        new Edge(
                                EdgeName.MOUTH_OF_THE_DART,
                                Path.of(back, peak, front),
                                waist.allowance(),
                                waist.turned()),
                        frontEdge));
        List<Mark> marks = new ArrayList<>(leg.marks());
        marks.add(new Mark(
                MarkName.FOLD_THE_DART, Mark.Kind.FOLD, Path.of(tip, peak).onGrid()));
        return Piece.of(
                        leg.name(),
                        leg.cut(),
                        leg.mirrored(),
                        leg.onFold(),
                        edges,
                        leg.grain(),
                        notches(leg, backEdge, frontEdge),
                        marks)
                .cutAround(outline);
    }

    /** A leg with a dart, or the part of one that carries it, cut straight across the dart's mouth: it is folded, not cut out. */
    static Piece cutAcross(Piece leg) {
        Optional<Mark> fold = leg.marks().stream()
                .filter(m -> m.name() == MarkName.FOLD_THE_DART)
                .findFirst();
        if (fold.isEmpty()) {
            return leg;
        }
        Edge waist = leg.edge(EdgeName.WAIST_EDGE);
        List<Edge> outline = new ArrayList<>();
        for (Edge edge : leg.edges()) {
            if (edge.name() == EdgeName.DART_BACK_LEG) {
                Path mouth = Path.of(
                        edge.line().start(),
                        fold.get().line().end(),
                        leg.edge(EdgeName.DART_FRONT_LEG).line().end());
                outline.add(new Edge(EdgeName.MOUTH_OF_THE_DART, mouth, waist.allowance(), waist.turned()));
            } else if (edge.name() != EdgeName.DART_FRONT_LEG) {
                outline.add(edge);
            }
        }
        return leg.cutAround(outline);
    }

    private static List<Edge> replaced(List<Edge> edges, List<Edge> instead) {
        List<Edge> out = new ArrayList<>();
        for (Edge edge : edges) {
            if (edge.name() == EdgeName.WAIST_EDGE) {
                out.addAll(instead);
            } else {
                out.add(edge);
            }
        }
        return out;
    }

    /** The side notch halves what is sewn to the band; a notch stands at each leg of the dart. */
    private static List<Notch> notches(Piece leg, Edge back, Edge front) {
        List<Notch> out = new ArrayList<>();
        leg.notches().stream().filter(n -> n.edge() != EdgeName.WAIST_EDGE).forEach(out::add);
        double side = (back.length() + front.length()) / 2;
        Edge on = side > back.length() ? front : back;
        out.add(Outline.notch(
                NotchName.SIDE, on, side > back.length() ? side - back.length() : side, Notch.Mark.SINGLE));
        out.add(Outline.notch(NotchName.DART, back, back.length(), Notch.Mark.SINGLE));
        out.add(Outline.notch(NotchName.DART, front, 0, Notch.Mark.SINGLE));
        return out;
    }

    /** Why the dart is as wide and as long as it is. */
    static List<Reason> reasons(Order order, Dart dart, double hip) {
        Ruled width = Ruled.of(
                dart.intake(),
                Tell.said("rule.dart-width", Part.number(MOST_OF_HIP, 2), Part.number(MOST_OF_LENGTH, 2)),
                SOURCE,
                new Input(Tell.said("input.dart-surplus"), dart.surplus(), "mm", order.its(What.WAIST_EDGE_LENGTH)),
                new Input(Tell.said("input.half-hip"), hip, "mm", order.hipWidth()),
                Inputs.length(order.its(What.DART_LENGTH), dart.length()));
        Ruled length = Ruled.of(
                dart.length(),
                Tell.said("rule.dart-length", Part.length(TIP_ABOVE_HIP), Part.number(TIP_SHARE, 2)),
                SOURCE,
                Inputs.rule(Tell.said("input.tip-above-hip"), dart.tipAboveHip()));
        return List.of(width.reason(order.its(What.DART_WIDTH)), length.reason(order.its(What.DART_LENGTH)));
    }
}
