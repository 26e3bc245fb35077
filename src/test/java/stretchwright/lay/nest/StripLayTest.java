package stretchwright.lay.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import stretchwright.benchmarks.Instances;
import stretchwright.ground.Findings;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;

class StripLayTest {
    private static final Path SHARED =
            Path.of(System.getProperty("stretchwright.shared", "../shared")).resolve("data/layout");

    /** All items together; the benchmarks have up to 600, the real outlines from 3700. */
    private static final int MANY_CORNERS = 1000;

    private static StripResult lay(StripInstance instance, int rounds, int threads) {
        return StripLay.lay(
                        instance,
                        7,
                        new Effort(rounds, rounds / 4),
                        threads,
                        LayClock.NONE,
                        step -> {},
                        new Findings("test"))
                .orElseThrow();
    }

    private static StripInstance squares(double height) {
        Polygon square = new Polygon(List.of(Point.ORIGIN, new Point(0.5, 0), new Point(0.5, 0.5), new Point(0, 0.5)));
        return new StripInstance("squares", height, List.of(0.0), List.of(new StripInstance.Item("square", 4, square)));
    }

    /** By hand: four squares of a half on a strip of one make a square of one. */
    @Test
    void squaresFillTheStrip() {
        StripResult result = lay(squares(1), 4, 2);
        assertThat(result.length()).isEqualTo(1);
        assertThat(result.density()).isCloseTo(1, within(1e-12));
        assertThat(result.placements()).hasSize(4);
    }

    @Test
    void anItemHigherThanTheStripIsAFinding() {
        Findings findings = new Findings("squares.json");
        assertThat(StripLay.lay(squares(0.4), 1, new Effort(4, 1), 2, LayClock.NONE, step -> {}, findings))
                .isEmpty();
        assertThat(findings.all().get(0).line())
                .startsWith("squares.json: items.square: The item is higher than the strip of 0.4");
    }

    @Test
    void aStopAtOnceStillGivesALayout() {
        LayClock over = LayClock.of(() -> true, () -> true);
        assertThat(StripLay.lay(squares(1), 1, Effort.UNLIMITED, 2, over, step -> {}, new Findings("test")))
                .isPresent();
    }

    @Test
    void aStopWithinARoundIsReplayedByTheRoundsBefore() throws IOException {
        StripInstance shapes = read("shapes0");
        AtomicInteger asked = new AtomicInteger();
        LayClock soon = LayClock.of(() -> false, () -> asked.incrementAndGet() > 2000);
        StripResult stopped = StripLay.lay(shapes, 1, Effort.UNLIMITED, 2, soon, step -> {}, new Findings("test"))
                .orElseThrow();
        assertThat(stopped.spent().explore()).isBetween(1, 200);
        assertThat(StripLay.lay(shapes, 1, stopped.spent(), 2, LayClock.NONE, step -> {}, new Findings("test")))
                .contains(stopped);
    }

    @Tag("slow")
    @Test
    void theSameSeedAndRoundsGiveTheSameLayoutOnOneThreadAndTwo() throws IOException {
        StripInstance fu = read("fu");
        StripResult result = lay(fu, 16, 2);
        assertThat(result.history()).hasSizeGreaterThan(1);
        assertThat(lay(fu, 16, 2)).isEqualTo(result);
        assertThat(lay(fu, 16, 1)).isEqualTo(result);
    }

    /** best-known.md, table D: one pass of bottom-left on a raster; the work here is a few passes of each. */
    @Test
    @Tag("slow")
    void instancesOfFewCornersAreLaidWithoutOverlap() throws IOException {
        List<StripInstance> few =
                instances().stream().filter(i -> corners(i) < MANY_CORNERS).toList();
        assertThat(few).hasSizeGreaterThanOrEqualTo(21);
        few.forEach(StripLayTest::laidWithoutOverlap);
    }

    /** The real outlines of many corners: about a minute each. */
    @Test
    @Tag("long")
    void instancesOfManyCornersAreLaidWithoutOverlap() throws IOException {
        List<StripInstance> many =
                instances().stream().filter(i -> corners(i) >= MANY_CORNERS).toList();
        assertThat(many).hasSizeGreaterThanOrEqualTo(4);
        many.forEach(StripLayTest::laidWithoutOverlap);
    }

    private static List<StripInstance> instances() throws IOException {
        assumeTrue(Files.isDirectory(SHARED), "skipped: there is no ../shared with the instances");
        List<Path> files;
        try (Stream<Path> all = Files.list(SHARED)) {
            files = all.filter(f -> f.toString().endsWith(".json")).sorted().toList();
        }
        List<StripInstance> instances = new ArrayList<>();
        for (Path file : files) {
            instances.add(Instances.read(file));
        }
        return instances;
    }

    private static int corners(StripInstance instance) {
        return instance.items().stream()
                .mapToInt(i -> i.demand() * i.polygon().points().size())
                .sum();
    }

    private static void laidWithoutOverlap(StripInstance instance) {
        long start = System.nanoTime();
        StripResult result = lay(instance, 24, 2);
        System.out.printf(
                Locale.ROOT,
                "%s: length %.4f, density %.2f %%, first %.4f, rounds %s, %.2f s%n",
                instance.name(),
                result.length(),
                100 * result.density(),
                result.history().get(0).length(),
                result.spent(),
                (System.nanoTime() - start) / 1e9);
        mustHold(instance, result);
    }

    /** Second opinion: JTS 1.20 on the placements as they are written out, in the instance's own units. */
    private static void mustHold(StripInstance instance, StripResult result) {
        List<org.locationtech.jts.geom.Polygon> placed = new ArrayList<>();
        double right = 0;
        for (StripResult.Placement p : result.placements()) {
            Polygon outline = instance.items().stream()
                    .filter(i -> i.id().equals(p.item()))
                    .findFirst()
                    .orElseThrow()
                    .polygon()
                    .placed(false, p.rotation(), new Point(p.x(), p.y()));
            assertThat(instance.rotations()).contains(p.rotation());
            assertThat(outline.box().minX()).isGreaterThanOrEqualTo(-1e-9);
            assertThat(outline.box().minY()).isGreaterThanOrEqualTo(-1e-9);
            assertThat(outline.box().maxY()).isLessThanOrEqualTo(instance.stripHeight() * (1 + 1e-12));
            right = Math.max(right, outline.box().maxX());
            placed.add(jts(outline));
        }
        // outlines with many decimals are searched with by ones up to two units larger
        assertThat(right).isBetween(result.length() - 1e-5 * instance.stripHeight(), result.length() * (1 + 1e-9));
        double unit = instance.stripHeight() * instance.stripHeight();
        for (int i = 0; i < placed.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (placed.get(i).getEnvelopeInternal().intersects(placed.get(j).getEnvelopeInternal())) {
                    assertThat(placed.get(i).intersection(placed.get(j)).getArea() / unit)
                            .as(instance.name())
                            .isLessThan(1e-9);
                }
            }
        }
        for (StripInstance.Item item : instance.items()) {
            assertThat(result.placements().stream().filter(p -> p.item().equals(item.id())))
                    .hasSize(item.demand());
        }
    }

    private static org.locationtech.jts.geom.Polygon jts(Polygon polygon) {
        List<Coordinate> ring = new ArrayList<>();
        polygon.points().forEach(p -> ring.add(new Coordinate(p.x(), p.y())));
        ring.add(ring.get(0));
        return new GeometryFactory().createPolygon(ring.toArray(Coordinate[]::new));
    }

    private static StripInstance read(String name) throws IOException {
        Path file = SHARED.resolve(name + ".json");
        assumeTrue(Files.exists(file), "skipped: there is no instance " + name);
        return Instances.read(file);
    }
}
