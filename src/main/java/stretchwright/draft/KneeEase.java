package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.ground.Part;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Grain;
import stretchwright.pattern.Mark;
import stretchwright.pattern.Notch;
import stretchwright.pattern.NotchName;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Reason;

/**
 * Room for the bent knee: the front is drafted longer and the back shorter over the knee, and the front is eased in.
 *
 * <p>The zone is the {@link #ZONE} mm over the kneecap in which the skin of a deep bend grows (trade-values section 3,
 * tool default). Each part gives or takes at most {@link #MOST} of it, and the front never more than the along reduction
 * took off it: room by stretch, never by slack (section 2.1).
 */
final class KneeEase {
    static final double ZONE = 200;

    /** A small leg has a smaller knee: this share of the knee's height at most. */
    private static final double ZONE_OF_KNEE = 0.45;

    /** More than 2 x 4 % cannot be eased into a knit seam without gathers (common practice, no source). */
    static final double MOST = 0.04;

    /** Less than this on each side is not worth the easing, mm. */
    static final double LEAST = 2;

    private static final double NOTCH_ROOM = 15;

    private KneeEase() {}

    /** The middle of the zone on the flat leg, half its height, and how much each part changes, mm. */
    record Zone(double middle, double half, double change) {
        double low() {
            return middle - half;
        }

        double high() {
            return middle + half;
        }

        /** Where a height goes when the zone grows by this much; its middle stays. */
        double moved(double y, double by) {
            double t = Math.max(-1, Math.min(1, (y - middle) / half));
            // the growth is even in the middle and fades out at the ends
            double share = 0.75 * (t - t * t * t / 3) + 0.5;
            return y + by * (share - 0.5);
        }
    }

    static Zone zone(Order order) {
        Body body = order.body();
        double flat = 1 - order.reductions().along();
        double knee = body.mm(Measure.KNEE_HEIGHT) * flat;
        double zone = Math.min(ZONE, ZONE_OF_KNEE * knee);
        double spare = body.seated() ? MOST : Math.min(MOST, order.reductions().along());
        return new Zone(knee, zone / 2, spare * zone);
    }

    /** Why the front is so much longer than the back. */
    static Reason reason(Order order) {
        Zone zone = zone(order);
        return Ruled.of(
                        2 * zone.change(),
                        Tell.said("rule.knee-ease", Part.share(MOST), Part.length(ZONE), Part.number(ZONE_OF_KNEE, 2)),
                        Tell.said("source.knee"),
                        Inputs.rule(Tell.said("input.zone"), 2 * zone.half()),
                        order.along())
                .reason(Dimension.of(PieceName.of(PieceKind.FRONT_LEG), Dimension.What.KNEE_EASE));
    }

    /** The parts of one leg, from the front on; a panel keeps its length and gets the notches only. */
    static List<Piece> of(List<Piece> parts, Zone zone) {
        Edge front = parts.get(0).edge(EdgeName.FRONT_INSEAM);
        double low = front.length() - front.line().alongAtHeight(zone.low());
        double high = front.length() - front.line().alongAtHeight(zone.high());
        List<Piece> out = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            double by = i == 0 ? zone.change() : i == parts.size() - 1 ? -zone.change() : 0;
            out.add(moved(notched(parts.get(i), zone, low, high), zone, by));
        }
        return out;
    }

    /** The ends of the zone: at its heights, but on the back inseam as far from the hem as on the front one. */
    private static Piece notched(Piece piece, Zone zone, double low, double high) {
        List<Notch> notches = new ArrayList<>(piece.notches());
        for (Edge e : piece.edges()) {
            if (e.name() == EdgeName.BACK_INSEAM) {
                notches.add(Outline.notch(NotchName.BELOW_KNEE, e, low, Notch.Mark.SINGLE));
                notches.add(Outline.notch(NotchName.ABOVE_KNEE, e, high, Notch.Mark.SINGLE));
            } else if (e.name() == EdgeName.FRONT_INSEAM
                    || e.name() == EdgeName.SIDE_EDGE
                    || e.name() == EdgeName.FRONT_EDGE
                    || e.name() == EdgeName.BACK_EDGE) {
                Outline.notchAt(NotchName.BELOW_KNEE, zone.low(), e, NOTCH_ROOM, notches);
                Outline.notchAt(NotchName.ABOVE_KNEE, zone.high(), e, NOTCH_ROOM, notches);
            }
        }
        notches.removeIf(n -> isBesideZone(n, notches));
        return piece.with(notches, piece.marks());
    }

    /** A walking notch of the thigh or shin so near to an end of the zone that the two would be taken for each other. */
    private static boolean isBesideZone(Notch notch, List<Notch> all) {
        return switch (notch.name()) {
            case BELOW_CROTCH, ABOVE_MID_THIGH, MID_THIGH, BELOW_MID_THIGH, ABOVE_CALF ->
                all.stream()
                        .filter(n -> n.name() == NotchName.ABOVE_KNEE || n.name() == NotchName.BELOW_KNEE)
                        .anyMatch(n -> n.edge() == notch.edge() && Math.abs(n.along() - notch.along()) < NOTCH_ROOM);
            default -> false;
        };
    }

    private static Piece moved(Piece piece, Zone zone, double by) {
        List<Edge> edges = new ArrayList<>();
        for (Edge e : piece.edges()) {
            edges.add(new Edge(e.name(), moved(e.line(), zone, by), e.allowance(), e.turned()));
        }
        List<Notch> notches = new ArrayList<>();
        for (Notch n : piece.notches()) {
            Edge was = piece.edge(n.edge());
            Edge is = Outline.edge(edges, n.edge());
            double along =
                    moved(Outline.before(was.line(), n.along()), zone, by).length();
            notches.add(Outline.notch(n.name(), is, along, n.mark()));
        }
        List<Mark> marks = piece.marks().stream()
                .map(m -> new Mark(m.name(), m.kind(), moved(m.line(), zone, by)))
                .toList();
        Grain grain =
                new Grain(at(piece.grain().from(), zone, by), at(piece.grain().to(), zone, by));
        return Darts.cutAcross(
                Piece.of(piece.name(), piece.cut(), piece.mirrored(), piece.onFold(), edges, grain, notches, marks));
    }

    private static Point at(Point p, Zone zone, double by) {
        return new Point(p.x(), zone.moved(p.y(), by)).onGrid();
    }

    /** Long straight chords are cut at the zone first, so that what lies outside it keeps its length. */
    private static Path moved(Path path, Zone zone, double by) {
        List<Point> out = new ArrayList<>();
        for (int i = 0; i < path.points().size(); i++) {
            Point p = path.points().get(i);
            if (i > 0) {
                Point from = path.points().get(i - 1);
                for (double share : stops(from, p, zone)) {
                    out.add(at(from.towards(p, share), zone, by));
                }
            }
            out.add(at(p, zone, by));
        }
        return new Path(out);
    }

    private static List<Double> stops(Point from, Point to, Zone zone) {
        List<Double> out = new ArrayList<>();
        double rise = to.y() - from.y();
        if (Math.abs(rise) < zone.half() / 4) {
            return out;
        }
        int parts = 20;
        for (int k = 0; k <= parts; k++) {
            double y = rise > 0 ? zone.low() + 2 * zone.half() * k / parts : zone.high() - 2 * zone.half() * k / parts;
            double share = (y - from.y()) / rise;
            if (share > 1e-6 && share < 1 - 1e-6) {
                out.add(share);
            }
        }
        return out;
    }
}
