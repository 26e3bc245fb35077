package stretchwright.lay.nest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;

/** A search that comes down to what is known to be enough is over, and on the way there nothing is done otherwise. */
class EnoughTest {
    private static final CrowdSample SAMPLE = new CrowdSample(new StripInstance(
            "angles",
            40,
            List.of(0.0, 180.0),
            List.of(new StripInstance.Item(
                    "angle",
                    6,
                    new Polygon(List.of(
                            Point.ORIGIN,
                            new Point(13, 0),
                            new Point(13, 4),
                            new Point(5, 4),
                            new Point(5, 17),
                            new Point(0, 17)))))));

    private static Crew.Result searched(long enough) {
        Bed bed = Bed.of(SAMPLE.parts, Strip.plain(SAMPLE.width), 0, 0, enough).orElseThrow();
        return Crew.search(bed, SAMPLE.layout, 3, 2, new Effort(30, 10), LayClock.NONE, f -> {}, 100_000);
    }

    private static List<List<Long>> places(Layout layout) {
        return layout.spots().stream()
                .map(s -> List.of((long) s.variant(), s.x(), s.y()))
                .toList();
    }

    @Test
    void theSameLayoutInFewerRounds() {
        Crew.Result whole = searched(0);
        long shortest = whole.layout().length();
        assertThat(shortest).isLessThan(SAMPLE.layout.length());
        Crew.Result enough = searched(shortest);
        assertThat(places(enough.layout())).isEqualTo(places(whole.layout()));
        assertThat(rounds(enough)).isLessThan(rounds(whole));
        assertThat(rounds(searched(shortest - 1))).isEqualTo(rounds(whole));
    }

    private static int rounds(Crew.Result result) {
        return result.spent().explore() + result.spent().compress();
    }
}
