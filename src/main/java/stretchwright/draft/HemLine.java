package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Part;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.ground.Roots;
import stretchwright.pattern.Shift;

/**
 * The lower edge of a leg that is lower behind than in front, and level where it must be.
 *
 * <p>The leg has one inseam, at the inner ankle; the side line opposite runs down the outer ankle. So the instep lies
 * midway between front inseam and side line, the heel midway between side line and back inseam. Half cosines from the
 * inseam up to the instep, down to the heel, back up to the inseam: level and so square to both inseams, at equal
 * height there, steepest slope the same all over, rise and fall the same. Where a maker moves the edge at the side line, one whole
 * cosine between the inseams more. Maths: docs/maths/draft.md, hems.
 *
 * @param drop how much lower the edge is behind than in front, mm
 * @param side how much lower it is at the side line than at the inseam, mm
 */
record HemLine(double drop, double side) {
    /** Points of a sloping edge; chords of about 6 mm leave the curve by less than 0.1 mm. */
    private static final int PARTS = 60;

    /** What makers use, mm (common practice, no source). */
    private static final double LEAST_USUAL_DROP = 30;

    private static final double MOST_USUAL_DROP = 60;

    static HemLine of(Order order) {
        return new HemLine(order.style().lower().hemDrop(), order.shift(Shift.SIDE_HEM));
    }

    private boolean isLevel() {
        return drop == 0 && side == 0;
    }

    /** How much lower the hem is behind than in front; empty for a level one. */
    static Optional<Ruled> drop(Order order) {
        double drop = order.style().lower().hemDrop();
        return drop > 0
                ? Optional.of(Ruled.of(
                        drop,
                        Tell.said("rule.hem-drop", Part.span(LEAST_USUAL_DROP, MOST_USUAL_DROP)),
                        Tell.said("source.hems-practice"),
                        Inputs.style(Tell.said("input.hem-drop"), drop)))
                : Optional.empty();
    }

    /** From the front inseam's lower end to the back inseam's, at the same height. */
    Path between(Point front, Point back) {
        if (isLevel()) {
            return Path.of(front, back);
        }
        List<Point> points = new ArrayList<>();
        points.add(front);
        // moved at the side it begins steeper: shorter chords leave its corners square
        int parts = side == 0 ? PARTS : 2 * PARTS;
        for (int i = 1; i < parts; i++) {
            double share = (double) i / parts;
            points.add(new Point(front.x() + share * (back.x() - front.x()), front.y() + height(share)));
        }
        points.add(back);
        return new Path(points);
    }

    /** Over the inseam's end at a share of the way round, mm. */
    private double height(double share) {
        return drop / 2 * rise(share) - side / 2 * (1 - StrictMath.cos(2 * Math.PI * share));
    }

    /** Height over the inseam's end in units of half the drop, at a share of the way round: 1 instep, -1 heel. */
    static double rise(double share) {
        if (share <= 0.25) {
            return (1 - StrictMath.cos(4 * Math.PI * share)) / 2;
        }
        if (share <= 0.75) {
            return StrictMath.cos(2 * Math.PI * (share - 0.25));
        }
        return -(1 - StrictMath.cos(4 * Math.PI * (1 - share))) / 2;
    }

    /**
     * Smallest radius of the edge, mm: of the drop at the inseam ends, 1 / (drop / 2 * (4 pi / width)^2 / 2), of the side at both
     * ends and in the middle.
     */
    double sharpest(double width) {
        double turn = 4 * Math.PI / width;
        double once = turn / 2;
        return 1 / (drop / 4 * turn * turn + Math.abs(side) / 2 * once * once);
    }

    /** Distance from end to end of an edge that is as long as wanted. */
    double across(double edge) {
        if (isLevel()) {
            return edge;
        }
        return Roots.between(w -> between(Point.ORIGIN, new Point(w, 0)).length() - edge, edge / 2, edge)
                .orElseThrow(() -> new IllegalStateException("an edge of " + edge + " mm cannot be " + this));
    }
}
