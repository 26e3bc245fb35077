package stretchwright.lay.nest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class StrideTest {
    private final Stride stride = new Stride();

    private List<Double> sharesOf(int misses) {
        List<Double> out = new ArrayList<>();
        for (int i = 0; i < misses; i++) {
            if (stride.missed()) {
                out.add(stride.share());
            }
        }
        return out;
    }

    @Test
    void halvedDownToTheLeastWhereItIsTooMuch() {
        assertThat(stride.share()).isEqualTo(0.02);
        assertThat(sharesOf(5)).containsExactly(0.01, 0.005, 0.0025, 0.00125, 0.001);
        assertThat(stride.large()).isFalse();
    }

    /** The least is missed eight times, what is more three times; then twice as much is tried, at last the least again. */
    @Test
    void whereTheLeastIsMissedItGrowsAgain() {
        sharesOf(5);
        assertThat(sharesOf(8 + 4 * 3)).containsExactly(0.002, 0.004, 0.008, 0.016, 0.001);
    }

    /** Grown in vain it goes the other way, where any share is missed four times, and then back. */
    @Test
    void grownInVainItGoesTheOtherWay() {
        sharesOf(5);
        sharesOf(8 + 4 * 3 - 1);
        assertThat(stride.anew()).isFalse();
        sharesOf(1);
        assertThat(stride.anew()).isTrue();
        assertThat(sharesOf(5 * 4)).containsExactly(0.002, 0.004, 0.008, 0.016, 0.001);
        assertThat(stride.anew()).isFalse();
    }

    /** What was reached by a larger share goes on with it, and comes down from there. */
    @Test
    void afterASuccessItComesDownFromThere() {
        sharesOf(5);
        sharesOf(8 + 2 * 3);
        stride.reached();
        assertThat(stride.large()).isTrue();
        assertThat(sharesOf(3)).containsExactly(0.004, 0.002, 0.001);
    }

    @Test
    void anothersShorterLayoutIsGoneOnFromByTheLeast() {
        sharesOf(5);
        sharesOf(8 + 3);
        stride.overtaken();
        assertThat(stride.share()).isEqualTo(0.001);
        assertThat(stride.large()).isFalse();
    }
}
