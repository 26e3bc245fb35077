package stretchwright.lay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.ground.RandomStream;

/** Searches that start over often, on invented triangles and angles. */
class CrewTest {
    private static final int OFTEN = 3;
    private static final Effort EFFORT = new Effort(60, 10);

    private static CrowdSample sample() {
        RandomStream random = RandomStream.of(1, "crew test");
        List<StripInstance.Item> items = new ArrayList<>();
        for (int k = 0; k < 5; k++) {
            double w = random.between(10, 30);
            double h = random.between(10, 30);
            List<Point> corners = k % 2 == 0
                    ? List.of(Point.ORIGIN, new Point(w, 0), new Point(0, h))
                    : List.of(
                            Point.ORIGIN,
                            new Point(w, 0),
                            new Point(w, h / 3),
                            new Point(w / 3, h / 3),
                            new Point(w / 3, h),
                            new Point(0, h));
            items.add(new StripInstance.Item("part " + k, 4, new Polygon(corners)));
        }
        return new CrowdSample(new StripInstance("parts", 60, List.of(0.0, 180.0), items));
    }

    private static Crew.Result search(CrowdSample sample, int threads, List<Long> found) {
        return Crew.search(
                sample.bed,
                sample.layout,
                1,
                threads,
                EFFORT,
                LayClock.NONE,
                OFTEN,
                f -> found.add(f.layout().length()));
    }

    private static List<long[]> places(Layout layout) {
        return layout.spots().stream()
                .map(s -> new long[] {s.variant(), s.x(), s.y()})
                .toList();
    }

    @Test
    void startingOverTheShortestOfAllIsKept() {
        CrowdSample sample = sample();
        List<Long> found = new ArrayList<>();
        Crew.Result result = search(sample, 2, found);
        assertThat(result.spent()).isEqualTo(EFFORT);
        assertThat(found).isNotEmpty().isSortedAccordingTo((a, b) -> Long.compare(b, a));
        assertThat(result.layout().length()).isLessThan(sample.layout.length()).isEqualTo(found.get(found.size() - 1));
    }

    @Test
    void startingOverTheSameIsFoundOnOneThreadAndOnTwoAndAgain() {
        CrowdSample sample = sample();
        List<long[]> places = places(search(sample, 1, new ArrayList<>()).layout());
        for (int threads : new int[] {2, 1, 2}) {
            assertThat(places(search(sample, threads, new ArrayList<>()).layout()))
                    .usingRecursiveComparison()
                    .isEqualTo(places);
        }
    }

    /** With so few rounds the search ends in another layout where it starts over than where it does not. */
    @Test
    void itDoesStartOver() {
        CrowdSample sample = sample();
        Layout once = Crew.search(sample.bed, sample.layout, 1, 2, EFFORT, LayClock.NONE, f -> {})
                .layout();
        assertThat(places(search(sample, 2, new ArrayList<>()).layout()))
                .usingRecursiveComparison()
                .isNotEqualTo(places(once));
    }
}
