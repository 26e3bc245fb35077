package stretchwright.pattern;

import stretchwright.ground.Point;

/**
 * A matching mark on an edge.
 *
 * @param name what it marks
 * @param edge the edge it sits on
 * @param along distance from the edge's start along the sew line, mm
 * @param at the place on the sew line
 * @param outward unit vector from the sew line towards the cut line
 * @param mark one or two cuts; back seams are double
 */
public record Notch(NotchName name, EdgeName edge, double along, Point at, Point outward, Mark mark) {
    public enum Mark {
        SINGLE,
        DOUBLE
    }
}
