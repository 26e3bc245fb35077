package stretchwright.draft;

/**
 * A leg's edge from the boot's top out to the hem: two arcs of a circle, upright at both ends, the roundest way from one
 * to the other. Where it would have to run out nearly level, the arcs are drawn out sideways to ellipses.
 *
 * @param top height where it leaves the upright, mm
 * @param end height where it is upright again
 * @param inner how far out at the top
 * @param outer how far out at the end
 */
record FlareCurve(double top, double end, double inner, double outer) {
    /** Half way down an arc runs out at most so far for each mm down as it would with this way out for each mm of height. */
    private static final double STEEPEST = 0.7;

    double at(double y) {
        double height = top - end;
        double way = outer - inner;
        double down = Math.max(0, Math.min(1, (top - y) / height));
        double share = down <= 0.5 ? half(down, way, height) : 1 - half(1 - down, way, height);
        return inner + way * share;
    }

    /** Share of the way out, a share of the height from one end, in the half that belongs to it. */
    private static double half(double down, double way, double height) {
        double aspect = Math.min(STEEPEST, Math.abs(way) / height);
        // circle through both ends of half the way, upright at the one: in units of the height
        double radius = (1 / aspect + aspect) / 4;
        return aspect == 0
                ? 2 * down * down
                : down * down / (radius + Math.sqrt(radius * radius - down * down)) / aspect;
    }
}
