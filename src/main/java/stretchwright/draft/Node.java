package stretchwright.draft;

import stretchwright.pattern.Level;

/**
 * A height at which the leg's width is given.
 *
 * @param height flat, mm
 * @param width flat width of the leg, mm
 * @param level the level of the report it stands for, or null where it only shapes the curve
 */
record Node(double height, double width, Level.@org.jspecify.annotations.Nullable Name level) {
    Node withWidth(double other) {
        return new Node(height, other, level);
    }
}
