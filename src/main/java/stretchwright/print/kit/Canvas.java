package stretchwright.print.kit;

import java.util.List;
import stretchwright.ground.Point;

/** What can be drawn on, in mm, y up: a PDF page, an SVG file, or either of them moved. */
public interface Canvas {
    void line(Ink ink, List<Point> points, boolean closed);

    public void text(Writing writing);

    /**
     * What is drawn inside is read out as one thing; a canvas that nobody has read out only draws it.
     *
     * @param words what a figure shows; empty where the text speaks for itself
     */
    default void spoken(Tag tag, String words, Runnable inside) {
        inside.run();
    }

    /** What is drawn inside belongs to one size alone, and can be left out with it where the file allows that. */
    default void in(SizeLine size, Runnable inside) {
        inside.run();
    }

    default void line(Ink ink, Point... points) {
        line(ink, List.of(points), false);
    }
}
