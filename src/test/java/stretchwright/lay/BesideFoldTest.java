package stretchwright.lay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.DoubleStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import stretchwright.ground.RandomStream;
import stretchwright.lay.nest.Shape;

/** The floor beside the fold, with every column asked at every place as the second opinion. Outlines invented. */
class BesideFoldTest {
    private static double plain(double[] atFold, Shape shape) {
        double least = Double.POSITIVE_INFINITY;
        for (int left = 0; left + shape.width() <= atFold.length; left++) {
            double plain = 0;
            double turned = 0;
            for (int c = 0; c < Floor.COLUMNS; c++) {
                long column = shape.width() * c / Floor.COLUMNS;
                double section = shape.columns.section(shape.minX + column + 0.5);
                plain = Math.max(plain, section + atFold[(int) (left + column)]);
                turned = Math.max(turned, section + atFold[(int) (left + shape.width() - 1 - column)]);
            }
            least = Math.min(least, Math.min(plain, turned));
        }
        return Double.isInfinite(least) ? 0 : least;
    }

    private static Shape leg(RandomStream random) {
        long[] x = {0, 100 + random.below(200), 120 + random.below(200), random.below(90)};
        long[] y = {0, random.below(50), 300 + random.below(300), 250 + random.below(300)};
        return Shape.of(x, y);
    }

    @Test
    void theSameAsWithEveryColumnAsked() {
        RandomStream random = RandomStream.of(3, "beside the fold");
        for (int k = 0; k < 200; k++) {
            Shape leg = leg(random);
            int folded = random.below(200);
            double high = random.below(4) * 70;
            double slope = random.between(-1, 1);
            double[] atFold = LongStream.range(0, 250 + random.below(200))
                    .mapToDouble(c -> c < folded ? Math.max(0, high + slope * c) : 0)
                    .toArray();
            assertThat(Floor.leastBeside(atFold, leg)).isEqualTo(plain(atFold, leg));
        }
        assertThat(Floor.leastBeside(DoubleStream.generate(() -> 1).limit(20).toArray(), leg(random)))
                .isZero();
    }
}
