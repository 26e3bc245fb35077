package stretchwright.lay.nest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import stretchwright.ground.RandomStream;

class NoFitTest {
    /** A star-shaped outline round the origin, with corners that point inwards. */
    private static Shape star(RandomStream random) {
        int n = 4 + random.below(9);
        long[] x = new long[n];
        long[] y = new long[n];
        for (int i = 0; i < n; i++) {
            double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / n;
            double radius = random.between(150, 1000);
            x[i] = Math.round(radius * StrictMath.cos(angle));
            y[i] = Math.round(radius * StrictMath.sin(angle));
        }
        return Shape.of(x, y);
    }

    private static long[] moved(long[] values, long by) {
        return Arrays.stream(values).map(v -> v + by).toArray();
    }

    private static double area(List<long[][]> parts) {
        return parts.stream().mapToDouble(p -> Shape.of(p[0], p[1]).area()).sum();
    }

    @Test
    void convexPartsHaveTheAreaOfTheOutline() {
        for (int seed = 0; seed < 500; seed++) {
            Shape star = star(new RandomStream(seed));
            assertThat(area(Convex.parts(star))).as("seed " + seed).isEqualTo(star.area());
        }
    }

    /** Second opinion: the exact test of two outlines, which knows nothing of convex parts. */
    @Test
    void aShiftIsFreeExactlyWhereTheOutlinesDoNotOverlap() {
        int free = 0;
        for (int seed = 0; seed < 4000; seed++) {
            RandomStream random = new RandomStream(seed);
            Shape moving = star(random);
            Shape lying = star(random);
            long dx = Math.round(random.between(-1500, 1500));
            long dy = Math.round(random.between(-1500, 1500));
            boolean overlap = Overlap.between(moved(moving.x, dx), moved(moving.y, dy), lying.x, lying.y);
            double depth = NoFit.of(Convex.parts(moving), Convex.parts(lying)).depth(dx, dy);
            assertThat(depth > 0).as("seed " + seed).isEqualTo(overlap);
            free += overlap ? 0 : 1;
        }
        assertThat(free).isBetween(400, 3600);
    }

    /** Second opinion: the depth of single shifts. A stretch holds for every x of its range, and at a single x leaves out none. */
    @Test
    void stretchesHoldForEveryXOfTheirRange() {
        int inside = 0;
        for (int seed = 0; seed < 400; seed++) {
            RandomStream random = new RandomStream(seed);
            NoFit noFit = NoFit.of(Convex.parts(star(random)), Convex.parts(star(random)));
            double x0 = random.between(-1500, 1500);
            double x1 = x0 + random.below(2) * random.between(0, 300);
            double[] stretches = new double[2 * noFit.parts()];
            int count = noFit.stretches(x0, x1, 0.01, stretches);
            for (int k = 0; k < 50; k++) {
                double x = random.between(x0, x1);
                double y = random.between(-1500, 1500);
                boolean in = false;
                boolean near = false;
                for (int s = 0; s < count; s += 2) {
                    in |= stretches[s] < y && y < stretches[s + 1];
                    near |= stretches[s] - 0.1 < y && y < stretches[s + 1] + 0.1;
                }
                boolean overlap = noFit.depth(x, y) > 0;
                assertThat(overlap || !in).as("seed " + seed).isTrue();
                assertThat(near || !overlap || x0 < x1).as("seed " + seed).isTrue();
                inside += in ? 1 : 0;
            }
        }
        assertThat(inside).isGreaterThan(2000);
    }

    /** Second opinion: JTS. Nothing of the simpler outline lies outside the other, and little of that is lost. */
    @Test
    void insideAnOutlineIsWhatIsLeftOfItWithFewerCorners() {
        int fewer = 0;
        for (int seed = 0; seed < 300; seed++) {
            Shape star = Outlines.star(new RandomStream(seed), 40, 10_000);
            Shape inside = Enclosing.inside(star, 100);
            var outer = Outlines.polygon(star.x, star.y, 0, 0);
            var inner = Outlines.polygon(inside.x, inside.y, 0, 0);
            assertThat(outer.covers(inner)).as("seed " + seed).isTrue();
            assertThat(outer.getArea() - inner.getArea()).as("seed " + seed).isBetween(0.0, 100 * outer.getLength());
            fewer += star.corners() - inside.corners();
        }
        assertThat(fewer).isGreaterThan(300);
    }

    /** By hand: two squares of 10 may come as near as 10; half way in, the way out is 5. */
    @Test
    void squaresTouchWithoutOverlap() {
        List<long[][]> square = Convex.parts(Shape.of(new long[] {0, 10, 10, 0}, new long[] {0, 0, 10, 10}));
        NoFit noFit = NoFit.of(square, square);
        assertThat(noFit.depth(10, 3)).isZero();
        assertThat(noFit.depth(5, 0)).isEqualTo(5);
        assertThat(noFit.wayOut(5, 1)).containsExactly(1, 0, 10);
    }

    /** A tip that pokes through a long slanted edge by less than a ten-millionth of a unit still overlaps. */
    @Test
    void aTouchIsToldFromTheLeastOverlapOnLongEdges() {
        long far = 12_000_000;
        Shape lying = Shape.of(new long[] {0, far, 0}, new long[] {0, 1, 10});
        Shape tip = Shape.of(new long[] {-3, 3, 0}, new long[] {-10, -10, 0});
        NoFit noFit = NoFit.of(Convex.parts(tip), Convex.parts(lying));
        assertThat(noFit.depth(far - 1, 1)).isPositive();
        assertThat(Overlap.between(moved(tip.x, far - 1), moved(tip.y, 1), lying.x, lying.y))
                .isTrue();
        assertThat(noFit.depth(0, 0)).isZero();
        assertThat(Overlap.between(tip.x, tip.y, lying.x, lying.y)).isFalse();
    }

    @Test
    void anEnclosingOutlineHasFewerCornersAndStaysNear() {
        int n = 200;
        long[] x = new long[n];
        long[] y = new long[n];
        for (int i = 0; i < n; i++) {
            double angle = 2 * Math.PI * i / n;
            double radius = 100_000 + 30_000 * StrictMath.cos(3 * angle);
            x[i] = Math.round(radius * StrictMath.cos(angle));
            y[i] = Math.round(radius * StrictMath.sin(angle));
        }
        Shape shape = Shape.of(x, y);
        Shape enclosing = Enclosing.of(shape, 500);
        assertThat(enclosing.corners()).isLessThan(n / 2);
        assertThat(enclosing.area()).isBetween(shape.area(), shape.area() * 1.01);
        for (int i = 0; i < n; i++) {
            assertThat(inside(enclosing, x[i], y[i])).as("corner " + i).isTrue();
        }
    }

    /** Inside one of the convex parts, or on its border. */
    private static boolean inside(Shape shape, long px, long py) {
        return Convex.parts(shape).stream().anyMatch(part -> {
            for (int i = 0; i < part[0].length; i++) {
                int k = (i + 1) % part[0].length;
                long[] a = {part[0][i], part[1][i]};
                long[] b = {part[0][k], part[1][k]};
                if (Convex.turn(a, b, new long[] {px, py}) < 0) {
                    return false;
                }
            }
            return true;
        });
    }
}
