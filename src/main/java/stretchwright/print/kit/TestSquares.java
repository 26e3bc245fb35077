package stretchwright.print.kit;

import java.util.List;
import stretchwright.ground.Point;

/**
 * A square of 100 mm inside one of 4 in, to be measured with a ruler before anything is cut.
 *
 * <p>Limits: trade-values section 7.2 (common practice): up to 0.5 mm in 100 is accepted; 1 % is 9.6 mm on a hip of 960.
 */
public final class TestSquares {
    static final double METRIC = 100;
    static final double INCHES = 101.6;
    public static final double SIDE = INCHES;

    /** Half as wide as the marks across the joins of sheets, which the squares keep clear of. */
    public static final double DIAMOND = 4;

    private TestSquares() {}

    /** The outer square's lower left corner lies at the place. */
    public static void draw(Canvas page, double x, double y) {
        double in = (INCHES - METRIC) / 2;
        square(page, x, y, INCHES);
        square(page, x + in, y + in, METRIC);
        double middle = x + SIDE / 2;
        page.text(Writing.middle(Ink.SQUARE, middle, y + 2.5, 2.6, Phrases.of("square.inner")));
        page.text(Writing.middle(Ink.SQUARE, middle, y + SIDE - 4.5, 2.6, Phrases.of("square.outer")));
    }

    /** How far from the printable edge all else stays: clear of the overlap strip, diamonds and notes. */
    public static double inset(double overlap) {
        return overlap / 2 + Math.max(overlap / 2, DIAMOND + 1) + 2;
    }

    private static void square(Canvas page, double x, double y, double side) {
        page.line(
                Ink.SQUARE,
                List.of(new Point(x, y), new Point(x + side, y), new Point(x + side, y + side), new Point(x, y + side)),
                true);
    }
}
