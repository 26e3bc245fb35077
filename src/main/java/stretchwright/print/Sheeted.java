package stretchwright.print;

import stretchwright.ground.Polygon;

/**
 * Something that goes onto sheets of paper: a piece, or a piece in several sizes.
 *
 * @param outline what has to show, in the drawing's own coordinates
 * @param drawing how it is drawn on a canvas, in the same coordinates
 */
record Sheeted(String name, Polygon outline, Drawn drawing) {
    /** Draws itself. */
    interface Drawn {
        void on(Canvas canvas);
    }
}
