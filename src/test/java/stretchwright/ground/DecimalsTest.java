package stretchwright.ground;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Java's own writing is the second opinion. */
class DecimalsTest {
    @Test
    void numbersAreWrittenAsJavaWritesThem() {
        RandomStream random = RandomStream.of(1, "decimals");
        for (int k = 0; k < 200_000; k++) {
            int decimals = random.below(7);
            // every third one half a last place or next to it, every third one of few digits
            double value = random.between(-1000, 1000);
            double half = (Math.rint(value * 10) + 0.5) / Math.pow(10, decimals);
            double one = k % 3 == 0 ? value : k % 3 == 1 ? half : Math.nextUp(Math.rint(value) / 8);
            assertThat(Decimals.fixed(one, decimals)).isEqualTo(String.format(Locale.ROOT, "%." + decimals + "f", one));
        }
    }

    @Test
    void veryLargeAndVerySmallOnesToo() {
        for (double value : new double[] {0, -0.0, 1e-300, -1e-9, 4.9e-324, 1e11, 123456789012345.678, 1e300}) {
            assertThat(Decimals.fixed(value, 4)).isEqualTo(String.format(Locale.ROOT, "%.4f", value));
        }
        assertThat(Decimals.fixed(Double.NaN, 2)).isEqualTo("NaN");
    }

    @Test
    void idleZerosAreLeftOut() {
        assertThat(Decimals.upTo(100, 0)).isEqualTo("100");
        assertThat(Decimals.upTo(100, 4)).isEqualTo("100");
        assertThat(Decimals.upTo(1.25, 4)).isEqualTo("1.25");
        assertThat(Decimals.upTo(-0.00001, 4)).isEqualTo("0");
        assertThat(Decimals.upTo(0.1 + 0.2, 4)).isEqualTo("0.3");
    }
}
