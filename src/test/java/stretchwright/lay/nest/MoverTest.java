package stretchwright.lay.nest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import stretchwright.ground.RandomStream;

class MoverTest {
    private static final long WIDE = 1000;
    private static final long LONG = 40;

    /** Three bars that may stand or lie on a bed where two can lie, and one could only stand free by standing out. */
    private static Bed bars() {
        Shape lying = Shape.of(new long[] {0, 900, 900, 0}, new long[] {0, 0, 20, 20});
        Shape standing = Shape.of(new long[] {0, 20, 20, 0}, new long[] {0, 0, 900, 900});
        Part bar = new Part(
                0, List.of(Part.Variant.of(0, lying, 0), Part.Variant.of(90, standing, 0)), Across.between(0, WIDE));
        return Bed.of(Collections.nCopies(3, bar), Strip.plain(WIDE), 0).orElseThrow();
    }

    @Test
    void aPartNeverStandsOutOfABedThatIsTooShortForIt() {
        Bed bed = bars();
        Crowd crowd = new Crowd(bed, LONG);
        List<Layout.Spot> spots =
                bed.parts.stream().map(p -> new Layout.Spot(p, 0, 0, 0, 20)).toList();
        crowd.start(new Layout(spots, LONG));
        Mover mover = new Mover(crowd, new RandomStream(1));
        for (int turn = 0; turn < 20; turn++) {
            for (int i = 0; i < crowd.n; i++) {
                mover.move(i);
                assertThat(crowd.boxY0[i]).isNotNegative();
                assertThat(crowd.boxY1[i]).isLessThanOrEqualTo(LONG);
                assertThat(crowd.boxX1[i]).isLessThanOrEqualTo(WIDE);
            }
            crowd.reweigh();
        }
    }

    /** By hand: more than 2000 parts, or an outline of more than 400 corners that cannot be enclosed, are not searched. */
    @Test
    void whatWouldNotBeSearchedInTimeIsNotTried() {
        Part bar = bars().parts.get(0);
        assertThat(Bed.of(Collections.nCopies(2001, bar), Strip.plain(WIDE), 0)).isEmpty();
        int n = 2000;
        long[] x = new long[n];
        long[] y = new long[n];
        for (int i = 0; i < n; i++) {
            x[i] = Math.round(400 * StrictMath.cos(2 * Math.PI * i / n) * 100);
            y[i] = Math.round(400 * StrictMath.sin(2 * Math.PI * i / n) * 100);
        }
        Part round = new Part(0, List.of(Part.Variant.of(0, Shape.of(x, y), 0)), Across.between(0, 100_000));
        assertThat(Bed.of(List.of(round), Strip.plain(100_000), 0)).isEmpty();
        assertThat(Bed.of(List.of(round), Strip.plain(100_000), 20)).isPresent();
    }
}
