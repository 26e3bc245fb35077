package stretchwright.lay.nest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Findings;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.ground.RandomStream;

class PairTest {
    private static Turned turned(double rotation, long... xy) {
        long[] x = new long[xy.length / 2];
        long[] y = new long[x.length];
        long sign = rotation == 0 ? 1 : -1;
        for (int i = 0; i < x.length; i++) {
            x[i] = sign * xy[2 * i];
            y[i] = sign * xy[2 * i + 1];
        }
        return new Turned(rotation, x, y);
    }

    /** By hand: two right triangles of 6 x 4, one turned by half a turn, fill the box of one; not turned nothing is saved. */
    @Test
    void twoTrianglesFillOneBox() {
        Turned plain = turned(0, 0, 0, 6, 0, 0, 4);
        Turned half = turned(180, 0, 0, 6, 0, 0, 4);
        Pair pair = Pair.of(plain, List.of(plain, half), 100).orElseThrow();
        assertThat(pair.box().width() * pair.box().height()).isEqualTo(24);
        assertThat(pair.second()).isSameAs(half);
    }

    @Test
    void aRectangleIsNoBetterInPairsAndNoPairIsWiderThanTheStrip() {
        Turned box = turned(0, 0, 0, 6, 0, 6, 4, 0, 4);
        assertThat(Pair.of(box, List.of(box), 100)).isEmpty();
        Turned wedge = turned(0, 0, 0, 6, 0, 6, 1, 0, 4);
        Turned half = turned(180, 0, 0, 6, 0, 6, 1, 0, 4);
        for (long width = 6; width < 14; width++) {
            long wide = Pair.of(wedge, List.of(half), width)
                    .map(p -> p.box().width())
                    .orElse(0L);
            assertThat(wide).isLessThanOrEqualTo(width);
        }
    }

    /** Random outlines: whatever the pair, the two share no area, and rows of pairs hold by the exact check. */
    @Test
    void pairsAndRowsOfThemHold() {
        RandomStream random = RandomStream.of(5, "pairs");
        int found = 0;
        for (int run = 0; run < 100; run++) {
            Turned plain = turned(0, star(random));
            Turned half = new Turned(180, negative(plain.x), negative(plain.y));
            long width = plain.width() + random.below(200);
            Optional<Pair> pair = Pair.of(plain, List.of(plain, half), width);
            found += pair.isPresent() ? 1 : 0;
            int[] demand = {1 + random.below(9)};
            Rows rows = Rows.lay(List.of(plain), List.of(pair), demand, width);
            StripCheck.mustHold(rows.placed(), demand, width, rows.length());
            assertThat(rows.length())
                    .isLessThanOrEqualTo(Rows.lay(List.of(plain), List.of(Optional.empty()), demand, width)
                            .length());
        }
        assertThat(found).isGreaterThan(50);
    }

    private static long[] negative(long[] values) {
        long[] out = new long[values.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = -values[i];
        }
        return out;
    }

    /** Five corners round a point, each farther than 10 from it. */
    private static long[] star(RandomStream random) {
        long[] out = new long[10];
        for (int i = 0; i < 5; i++) {
            double r = random.between(10, 60);
            double angle = Math.toRadians(72 * i + random.between(0, 50));
            out[2 * i] = Math.round(r * Math.cos(angle));
            out[2 * i + 1] = Math.round(r * Math.sin(angle));
        }
        return out;
    }

    private static StripResult triangles(int demand, Effort effort, int threads) {
        Polygon triangle = new Polygon(List.of(Point.ORIGIN, new Point(4, 0), new Point(0, 6)));
        StripInstance instance = new StripInstance(
                "triangles", 90, List.of(0.0, 180.0), List.of(new StripInstance.Item("triangle", demand, triangle)));
        return StripLay.lay(instance, 1, effort, threads, LayClock.NONE, s -> {}, new Findings("test"))
                .orElseThrow();
    }

    /** Five thousand right triangles, too many to be searched: by hand 15 pairs of 6 x 4 in a row of 90, 2500 of them in 167 rows. */
    @Test
    void manyEqualTrianglesAreLaidInPairs() {
        assertThat(triangles(5000, Effort.NONE, 2).length()).isEqualTo(167 * 4.0);
    }

    /** 900 of them, 30 rows of pairs, are searched on from there: no longer, and the same on one thread and two. */
    @Tag("slow")
    @Test
    void aSearchBeginsWithPairs() {
        StripResult one = triangles(900, new Effort(2, 1), 1);
        assertThat(one.history().get(0).length()).isEqualTo(30 * 4.0);
        assertThat(one.length()).isLessThanOrEqualTo(30 * 4.0);
        assertThat(triangles(900, new Effort(2, 1), 2).placements()).isEqualTo(one.placements());
    }
}
