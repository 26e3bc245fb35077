package stretchwright.lay.nest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import stretchwright.ground.RandomStream;

class BatchesTest {
    private static final long WIDTH = 200;

    /** Second opinion: JTS on every pair; and what rows by boxes make of the same outlines. */
    @Test
    void partsLieApartOnTheStripAndDenserThanInRows() {
        RandomStream random = RandomStream.of(9, "batches");
        for (int run = 0; run < 8; run++) {
            List<Part> parts = new ArrayList<>();
            List<Turned> lowest = new ArrayList<>();
            for (int k = 0; k < 60; k++) {
                Shape shape = Outlines.star(random, 4 + random.below(6), 30);
                parts.add(new Part(k, List.of(Part.Variant.of(0, shape, 0)), Across.between(0, WIDTH)));
                lowest.add(new Turned(0, shape.x, shape.y));
            }
            Layout layout = Batches.lay(parts, 12 + random.below(10), WIDTH);
            assertThat(layout.spots()).extracting(Layout.Spot::part).containsExactlyInAnyOrderElementsOf(parts);
            int[] ones = new int[parts.size()];
            Arrays.fill(ones, 1);
            assertThat(layout.length())
                    .isLessThan(Shelves.lay(lowest, ones, WIDTH).length());
            mustLieApart(layout);
        }
    }

    private static void mustLieApart(Layout layout) {
        for (int i = 0; i < layout.spots().size(); i++) {
            long[][] a = BottomLeft.corners(layout.spots().get(i));
            assertThat(Outline.least(a[0])).isNotNegative();
            assertThat(Outline.greatest(a[0])).isLessThanOrEqualTo(WIDTH);
            assertThat(Outline.least(a[1])).isNotNegative();
            assertThat(Outline.greatest(a[1])).isLessThanOrEqualTo(layout.length());
            for (int j = 0; j < i; j++) {
                long[][] b = BottomLeft.corners(layout.spots().get(j));
                assertThat(Outlines.sharedArea(a[0], a[1], b[0], b[1])).isLessThan(1e-9);
            }
        }
    }
}
