package stretchwright.print.sheets;

import stretchwright.ground.Polygon;
import stretchwright.print.kit.Canvas;

/**
 * Something that goes onto sheets of paper: a piece, or a piece in several sizes.
 *
 * @param outline what has to show, in the drawing's own coordinates
 * @param drawing how it is drawn on a canvas, in the same coordinates
 */
public record Sheeted(String name, Polygon outline, Drawn drawing) {
    /** Draws itself. */
    public interface Drawn {
        void on(Canvas canvas);
    }
}
