package stretchwright.print;

import java.util.List;
import stretchwright.ground.Point;

/** What can be drawn on, in mm, y up: a PDF page, an SVG file, or either of them moved. */
interface Canvas {
    void line(Ink ink, List<Point> points, boolean closed);

    void text(Writing writing);

    default void line(Ink ink, Point... points) {
        line(ink, List.of(points), false);
    }
}
