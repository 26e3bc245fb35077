package stretchwright.print.cards;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.ground.Point;

/**
 * Trunk and head above the waist, without arms, in mm: only stature and waist are measured there, all else is the usual
 * proportion of drawings (adults seven and a half heads tall, children of ten six and a half; from memory).
 */
final class UpperBody {
    private final double top;
    private final double head;
    private final double waist;
    private final double chin;
    private final double half;
    private final double depth;

    UpperBody(Body body, BodyOutline lower) {
        this.top = body.mm(Measure.STATURE);
        this.head = top / (body.figure() == Figure.CHILD ? 6.5 : 7.5);
        this.waist = body.mm(Measure.WAIST_HEIGHT);
        this.chin = top - head;
        this.half = lower.halfWaist();
        this.depth = lower.halfWaistDepth();
    }

    /** The share of the way from waist to chin. */
    private double up(double share) {
        return waist + (chin - waist) * share;
    }

    /** Each side from the waist over the shoulder to the neck. */
    List<List<Point>> front() {
        double chest = Math.max(0.088 * top, 0.95 * half);
        double shoulder = Math.max(0.106 * top, chest * 1.14);
        List<Point> left = List.of(
                new Point(half, waist),
                new Point(half + (chest - half) * 0.4, up(0.22)),
                new Point(chest, up(0.5)),
                new Point(chest * 1.12, up(0.66)),
                new Point(shoulder, up(0.79)),
                new Point(shoulder * 0.86, up(0.865)),
                new Point(0.052 * top, up(0.925)),
                new Point(0.033 * top, up(0.97)),
                new Point(0.032 * top, chin + head * 0.14));
        List<Point> line = SmoothLine.through(left);
        return List.of(line, line.stream().map(p -> new Point(-p.x(), p.y())).toList());
    }

    /** Breast and back; front at negative x. */
    List<List<Point>> side() {
        double chest = Math.max(0.066 * top, 0.98 * depth);
        List<Point> breast = List.of(
                new Point(-depth, waist),
                new Point(-depth - (chest * 1.05 - depth) * 0.35, up(0.2)),
                new Point(-chest * 1.05, up(0.52)),
                new Point(-chest * 0.85, up(0.74)),
                new Point(-0.035 * top, up(0.9)),
                new Point(-0.03 * top, chin + head * 0.02));
        List<Point> back = List.of(
                new Point(0.028 * top, chin + head * 0.22),
                new Point(0.034 * top, up(0.97)),
                new Point(0.055 * top, up(0.86)),
                new Point(chest * 1.02, up(0.66)),
                new Point(chest * 0.98, up(0.45)),
                new Point(depth + (chest - depth) * 0.3, up(0.18)),
                new Point(depth, waist));
        return List.of(SmoothLine.through(breast), SmoothLine.through(back));
    }

    /** An egg, closed; its crown is the stature. */
    private List<Point> head(double halfWidth, double forward) {
        List<Point> out = new ArrayList<>();
        for (int i = 0; i < 48; i++) {
            double angle = 2 * Math.PI * i / 48;
            double narrow = 1 - 0.16 * Math.max(0, -Math.sin(angle));
            out.add(new Point(
                    -forward + halfWidth * narrow * Math.cos(angle), chin + head / 2 + head / 2 * Math.sin(angle)));
        }
        return out;
    }

    List<Point> headFront() {
        return head(0.36 * head, 0);
    }

    List<Point> headSide() {
        return head(0.42 * head, 0.07 * head);
    }
}
