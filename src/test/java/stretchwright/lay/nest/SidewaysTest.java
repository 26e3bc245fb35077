package stretchwright.lay.nest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;

/** Searches that soon find nothing shorter and go sideways: boxes on a raster, invented. */
@Tag("slow")
class SidewaysTest {
    private static final Effort EFFORT = new Effort(150, 20);

    private static StripInstance.Item box(int id, int demand, double w, double h) {
        Polygon outline = new Polygon(List.of(Point.ORIGIN, new Point(w, 0), new Point(w, h), new Point(0, h)));
        return new StripInstance.Item("box " + id, demand, outline);
    }

    /** Lengths found, one after another, and the places at the end. */
    private record Ran(List<Long> found, List<List<Long>> places) {}

    private static Ran run(StripInstance instance, int threads) {
        CrowdSample sample = new CrowdSample(instance);
        List<Long> found = new ArrayList<>();
        Layout last = Crew.search(
                        sample.bed,
                        sample.layout,
                        1,
                        threads,
                        EFFORT,
                        LayClock.NONE,
                        f -> found.add(f.layout().length()))
                .layout();
        return new Ran(
                found,
                last.spots().stream()
                        .map(s -> List.of((long) s.variant(), s.x(), s.y()))
                        .toList());
    }

    @Tag("slow")
    @Test
    void oneThreadAndTwoFindTheSameAndSoDoesAnotherRun() {
        StripInstance instance = new StripInstance(
                "boxes",
                12,
                List.of(0.0),
                List.of(box(0, 5, 5, 4), box(1, 5, 4, 3), box(2, 4, 3, 7), box(3, 4, 2, 5), box(4, 3, 7, 2)));
        Ran once = run(instance, 1);
        assertThat(once.found()).isNotEmpty().isSortedAccordingTo((a, b) -> Long.compare(b, a));
        for (int threads : new int[] {2, 1, 2}) {
            assertThat(run(instance, threads)).isEqualTo(once);
        }
    }

    /** Three boxes wider than half the strip only lie one above the other: however often they change places, 18 is the length. */
    @Test
    void aLayoutThatCannotBeShorterStaysAsItWas() {
        StripInstance instance = new StripInstance(
                "tower", 10, List.of(0.0), List.of(box(0, 1, 5, 6), box(1, 1, 6, 7), box(2, 1, 7, 8)));
        CrowdSample sample = new CrowdSample(instance);
        Ran ran = run(instance, 2);
        assertThat(ran.found()).isEmpty();
        assertThat(ran.places())
                .isEqualTo(sample.layout.spots().stream()
                        .map(s -> List.of((long) s.variant(), s.x(), s.y()))
                        .toList());
    }
}
