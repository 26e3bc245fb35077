package stretchwright.lay.nest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import stretchwright.ground.RandomStream;

class ShelvesTest {
    private static Turned box(long x, long y, long width, long height) {
        return new Turned(0, new long[] {x, x + width, x + width, x}, new long[] {y, y, y + height, y + height});
    }

    private static List<Envelope> boxes(List<Turned> outlines, int[] demand, Shelves.Origins rows) {
        List<Envelope> out = new ArrayList<>();
        for (int k = 0; k < demand.length; k++) {
            for (int copy = 0; copy < demand[k]; copy++) {
                int i = out.size();
                Turned o = outlines.get(k);
                out.add(new Envelope(
                        rows.x()[i] + o.minX, rows.x()[i] + o.maxX, rows.y()[i] + o.minY, rows.y()[i] + o.maxY));
            }
        }
        return out;
    }

    /** By hand: 6 beside 4 in a row of 5, then 5 and 5 in a row of 3; the 4 x 2 stands in neither. */
    @Test
    void eachGoesIntoTheRowItLeavesFullest() {
        List<Turned> outlines = List.of(box(0, 0, 4, 2), box(-3, 7, 6, 5), box(0, 0, 4, 4), box(0, 0, 5, 3));
        Shelves.Origins rows = Shelves.lay(outlines, new int[] {1, 1, 1, 2}, 10);
        assertThat(rows.length()).isEqualTo(5 + 3 + 2);
        assertThat(boxes(outlines, new int[] {1, 1, 1, 2}, rows))
                .containsExactly(
                        new Envelope(0, 4, 8, 10),
                        new Envelope(0, 6, 0, 5),
                        new Envelope(6, 10, 0, 4),
                        new Envelope(0, 5, 5, 8),
                        new Envelope(5, 10, 5, 8));
    }

    /** JTS tells whether boxes share area. */
    @Test
    void boxesLieApartOnTheStripInNoMoreThanAllHeightsTogether() {
        RandomStream random = RandomStream.of(3, "shelves");
        for (int run = 0; run < 200; run++) {
            long width = 20 + random.below(200);
            List<Turned> outlines = new ArrayList<>();
            int[] demand = new int[1 + random.below(12)];
            for (int k = 0; k < demand.length; k++) {
                demand[k] = 1 + random.below(5);
                long wide = 1 + random.below((int) width);
                outlines.add(box(random.below(50) - 25, random.below(50) - 25, wide, 1 + random.below(80)));
            }
            Shelves.Origins rows = Shelves.lay(outlines, demand, width);
            List<Envelope> boxes = boxes(outlines, demand, rows);
            assertThat(boxes).hasSize(Arrays.stream(demand).sum());
            for (int i = 0; i < boxes.size(); i++) {
                Envelope a = boxes.get(i);
                assertThat(new Envelope(0, width, 0, rows.length()).contains(a)).isTrue();
                for (int j = 0; j < i; j++) {
                    assertThat(a.intersection(boxes.get(j)).getArea()).isZero();
                }
            }
            long all = IntStream.range(0, demand.length)
                    .mapToLong(k -> demand[k] * outlines.get(k).height())
                    .sum();
            assertThat(rows.length()).isBetween(1L, all);
        }
    }

    @Test
    void aMillionAreLaidInSeconds() {
        List<Turned> outlines = IntStream.range(0, 1000)
                .mapToObj(k -> box(0, 0, 1 + k % 97, 1 + k % 31))
                .toList();
        int[] demand = new int[1000];
        Arrays.fill(demand, 1000);
        long start = System.nanoTime();
        long length = Shelves.lay(outlines, demand, 1000).length();
        assertThat((System.nanoTime() - start) / 1e9).isLessThan(20);
        double area = outlines.stream()
                .mapToDouble(o -> 1000.0 * o.width() * o.height())
                .sum();
        assertThat(area / (1000.0 * length)).isBetween(0.9, 1.0);
    }
}
