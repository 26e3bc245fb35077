package stretchwright.print.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Box;
import stretchwright.ground.Point;

/** What is drawn only within a window. */
class ClippingTest {
    @Test
    void aLineIsCutAtTheWindow() {
        List<List<Point>> runs = Clipping.inside(
                List.of(new Point(-5, 5), new Point(15, 5), new Point(15, 8), new Point(-5, 8)),
                true,
                new Box(0, 0, 10, 10));
        assertThat(runs)
                .containsExactly(
                        List.of(new Point(0, 5), new Point(10, 5)), List.of(new Point(10, 8), new Point(0, 8)));
    }
}
