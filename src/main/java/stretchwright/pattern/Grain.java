package stretchwright.pattern;

import stretchwright.ground.Point;

/** The line that lies parallel to the selvage, from its lower to its upper end ("top of the garment up"), in mm. */
public record Grain(Point from, Point to) {
    public Grain {
        if (!(from.distance(to) > 1)) {
            throw new IllegalArgumentException("a grain line of " + from.distance(to) + " mm cannot be laid");
        }
    }
}
