package stretchwright.draft;

import java.util.List;
import org.assertj.core.api.SoftAssertions;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.pattern.Edge;
import stretchwright.pattern.Mark;
import stretchwright.pattern.Notch;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;

/** What must hold of each piece for itself: simple outlines, notches on their edges, marks and grain inside. */
final class PieceCheck {
    private final SoftAssertions softly;
    private final String who;

    private PieceCheck(SoftAssertions softly, String who) {
        this.softly = softly;
        this.who = who;
    }

    static void check(SoftAssertions softly, String who, Pattern pattern) {
        PieceCheck check = new PieceCheck(softly, who);
        for (Piece piece : pattern.pieces()) {
            check.simple(piece.name() + " sew line", piece.sewLine());
            check.simple(piece.name() + " cut line", piece.cutLine());
            check.notchesOnTheirEdges(piece);
            check.marksInside(piece);
        }
    }

    private void simple(String what, Polygon polygon) {
        Coordinate[] ring = new Coordinate[polygon.points().size() + 1];
        for (int k = 0; k < ring.length; k++) {
            Point p = polygon.points().get(k % polygon.points().size());
            ring[k] = new Coordinate(p.x(), p.y());
        }
        softly.assertThat(new GeometryFactory().createPolygon(ring).isValid())
                .as(who + " " + what + " is simple")
                .isTrue();
    }

    private void notchesOnTheirEdges(Piece piece) {
        for (Notch n : piece.notches()) {
            Edge edge = piece.edge(n.edge());
            softly.assertThat(n.along())
                    .as(who + " " + piece.name() + " notch " + n.name() + " within " + n.edge())
                    .isBetween(-0.01, edge.length() + 0.01);
            softly.assertThat(edge.line().at(n.along()).distance(n.at()))
                    .as(who + " " + piece.name() + " notch " + n.name() + " on " + n.edge())
                    .isLessThan(0.05);
        }
        Point middle = piece.grain().from().towards(piece.grain().to(), 0.5);
        softly.assertThat(piece.sewLine().contains(middle))
                .as(who + " grain inside " + piece.name())
                .isTrue();
    }

    private void marksInside(Piece piece) {
        for (Mark mark : piece.marks()) {
            for (Point p : mark.line().points()) {
                double off = piece.sewLine().contains(p) ? 0 : distance(piece.sewLine(), p);
                softly.assertThat(off)
                        .as(who + " mark " + mark.name() + " inside " + piece.name())
                        .isLessThan(0.05);
            }
        }
    }

    private static double distance(Polygon polygon, Point p) {
        double best = Double.POSITIVE_INFINITY;
        List<Point> q = polygon.points();
        for (int k = 0; k < q.size(); k++) {
            Point a = q.get(k);
            Point b = q.get((k + 1) % q.size());
            if (a.equals(b)) {
                continue;
            }
            double t = Math.max(
                    0, Math.min(1, p.minus(a).dot(b.minus(a)) / b.minus(a).dot(b.minus(a))));
            best = Math.min(best, p.distance(a.towards(b, t)));
        }
        return best;
    }
}
