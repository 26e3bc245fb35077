package stretchwright.draft;

import org.jspecify.annotations.Nullable;
import stretchwright.pattern.Level;

/**
 * A height at which the leg's width is given.
 *
 * @param height flat, mm
 * @param width flat width of the leg, mm
 * @param level the level of the report it stands for, or null where it only shapes the curve
 * @param firm a hard socket or brace is worn here: the width is not to be changed for the curve's sake
 */
record Node(double height, double width, Level.@Nullable Name level, boolean firm) {
    Node(double height, double width, Level.@Nullable Name level) {
        this(height, width, level, false);
    }
}
