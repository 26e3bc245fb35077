package stretchwright.lay.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Findings;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.ground.RandomStream;

/** Instances that bottom-left would take too long for: a valid layout in time, or a finding. */
class ManyPartsTest {
    private static final LayClock OVER = LayClock.of(() -> true, () -> true);

    private static Polygon round(int corners, double radius, double least, RandomStream random) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * i / corners;
            double r = radius * random.between(least, 1);
            points.add(
                    new Point(Math.rint(1e4 * r * Math.cos(angle)) / 1e4, Math.rint(1e4 * r * Math.sin(angle)) / 1e4));
        }
        return new Polygon(points);
    }

    private static StripInstance stars(int kinds, int copies, int corners, double radius) {
        RandomStream random = RandomStream.of(11, "many parts");
        return new StripInstance(
                "stars",
                40,
                List.of(0.0, 180.0),
                IntStream.range(0, kinds)
                        .mapToObj(k -> new StripInstance.Item("star " + k, copies, round(corners, radius, 0.6, random)))
                        .toList());
    }

    private static StripResult lay(StripInstance instance, Effort effort, LayClock clock) {
        Findings findings = new Findings("test");
        StripResult result = StripLay.lay(instance, 7, effort, 2, clock, step -> {}, findings)
                .orElseThrow();
        assertThat(findings.isEmpty()).isTrue();
        assertThat(result.placements())
                .hasSize(instance.items().stream()
                        .mapToInt(StripInstance.Item::demand)
                        .sum());
        return result;
    }

    private static String finding(StripInstance instance) {
        Findings findings = new Findings("test");
        assertThat(StripLay.lay(instance, 7, Effort.UNLIMITED, 2, LayClock.NONE, step -> {}, findings))
                .isEmpty();
        return findings.all().get(0).line();
    }

    /** The search goes on from batches, and is replayed by its rounds. */
    @Tag("slow")
    @Test
    void aLayoutInBatchesIsShortenedTheSameOnOneThreadAndTwo() {
        mustBeShortened(stars(40, 6, 12, 3), new Effort(40, 4));
    }

    /** The same from rows, where outlines with many corners make batches too slow. */
    @Tag("slow")
    @Test
    void aLayoutInRowsIsShortenedTheSameOnOneThreadAndTwo() {
        StripInstance rounds = new StripInstance(
                "rounds",
                40,
                List.of(0.0),
                List.of(new StripInstance.Item("round", 5, round(3_500, 8, 1, RandomStream.of(1, "rounds")))));
        assertThat(mustBeShortened(rounds, new Effort(12, 2)).history().get(0).length())
                .isCloseTo(48, within(1e-3));
    }

    private static StripResult mustBeShortened(StripInstance instance, Effort effort) {
        StripResult result = lay(instance, effort, LayClock.NONE);
        assertThat(result.history()).hasSizeGreaterThan(1);
        assertThat(result.length()).isLessThan(result.history().get(0).length());
        assertThat(StripLay.lay(instance, 7, effort, 1, LayClock.NONE, step -> {}, new Findings("test")))
                .contains(result);
        return result;
    }

    /** The layout that was there at the stop is what no rounds give again. */
    @Tag("slow")
    @Test
    void aStopAtOnceIsReplayedByNoRounds() {
        StripInstance stars = stars(600, 1, 12, 3);
        long start = System.nanoTime();
        StripResult stopped = lay(stars, Effort.UNLIMITED, OVER);
        assertThat((System.nanoTime() - start) / 1e9).isLessThan(10);
        assertThat(stopped.spent()).isEqualTo(new Effort(0, 0));
        assertThat(lay(stars, stopped.spent(), LayClock.NONE)).isEqualTo(stopped);
    }

    /** Cutting one such outline into slabs takes seconds; a stop does not wait for it. */
    @Test
    void aStopIsAnsweredWhileOutlinesAreMadeReady() {
        StripInstance large = stars(4, 1, 9_999, 8);
        long start = System.nanoTime();
        LayClock soon = LayClock.of(() -> true, () -> System.nanoTime() - start > 0.3e9);
        StripResult result = lay(large, Effort.UNLIMITED, soon);
        assertThat((System.nanoTime() - start) / 1e9).isLessThan(10);
        assertThat(result.spent()).isEqualTo(new Effort(0, 0));
    }

    @Test
    void manyThousandsAreLaidAtOnce() {
        StripResult result = lay(stars(20, 5_000, 12, 3), Effort.UNLIMITED, LayClock.NONE);
        assertThat(result.density()).isBetween(0.3, 1.0);
    }

    @Test
    void tooMuchIsAFinding() {
        assertThat(finding(stars(2, 1_000_000, 12, 3)))
                .isEqualTo("test: items: All copies together have 24000000 corners; at most 2000000 can be laid."
                        + " Lay fewer copies, or outlines with fewer corners.");
        StripInstance one = stars(1, 1, 12, 3);
        List<Double> turns =
                IntStream.range(0, 1_000_000).mapToObj(i -> i / 1e4).toList();
        assertThat(finding(new StripInstance("turns", 40, turns, one.items())))
                .startsWith("test: rotations: In all rotations the items have 12000000 corners");
        Polygon far = new Polygon(List.of(Point.ORIGIN, new Point(1e12, 0), new Point(1e12, 0.5), new Point(0, 0.5)));
        assertThat(finding(new StripInstance("far", 1, List.of(0.0), List.of(new StripInstance.Item("long", 1, far)))))
                .startsWith("test: items.long: The item is too large, or lies too far from its origin");
        Polygon speck = new Polygon(List.of(Point.ORIGIN, new Point(1e-5, 0), new Point(0, 1e-5)));
        assertThat(finding(new StripInstance(
                        "speck", 1e6, List.of(0.0), List.of(new StripInstance.Item("dot", 1, speck)))))
                .startsWith("test: items.dot: The item is too small");
    }
}
