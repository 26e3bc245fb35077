package stretchwright.print.steps;

import java.util.List;
import java.util.function.Consumer;
import stretchwright.ground.Box;
import stretchwright.print.kit.Canvas;

/**
 * One page of the booklet, to be drawn on a sheet of its own or on half of a larger one.
 *
 * @param bookmark what it begins; empty where nothing begins
 * @param drawn what is drawn, lower left corner at the origin
 */
record BookletPage(String bookmark, List<Consumer<Canvas>> drawn) {
    /** ISO 216 A5, mm. */
    static final double WIDTH = 148;

    static final double HEIGHT = 210;
    /** Narrow enough to keep 10 mm from the edge of half a Letter sheet too. */
    static final Box ROOM = new Box(13, 10.5, WIDTH - 13, HEIGHT - 10.5);

    static final BookletPage BLANK = new BookletPage("", List.of());

    BookletPage {
        drawn = List.copyOf(drawn);
    }

    void on(Canvas canvas) {
        drawn.forEach(d -> d.accept(canvas));
    }
}
