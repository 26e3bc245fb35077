package stretchwright.fabric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far the pull may lie off, by what was weighed (docs/maths/fit.md, "Ranges"). */
class CurveSpreadTest {
    /** The note's table; its lone weight hung at a stretch of some 60 %. */
    @ParameterizedTest
    @CsvSource({"0, 0.68, 0.66, 0.63", "1, 0.34, 0.29, 0.23", "2, 0.21, 0.17, 0.11", "3, 0.19, 0.14, 0.10"})
    void theTableOfTheMethod(int readings, double at5, double at10, double at20) {
        CurveSpread known = new CurveSpread(readings, readings == 1 ? 0.60 : 0.16, false, false, false, false);
        assertThat(known.tension(0.05)).isCloseTo(at5, within(0.02));
        assertThat(known.tension(0.10)).isCloseTo(at10, within(0.02));
        assertThat(known.tension(0.20)).isCloseTo(at20, within(0.02));
    }

    /** The derivative of ln((e^(k x) - 1) / (e^k - 1)) by k, by a difference: what the lone reading leaves open. */
    @Test
    void aLoneReadingLeavesTheBendOpen() {
        double x = 0.25;
        double h = 1e-5;
        double slope = (bent(LoadCurve.BEND + h, x) - bent(LoadCurve.BEND - h, x)) / (2 * h);
        CurveSpread lone = new CurveSpread(1, 0.40, false, false, false, false);
        assertThat(lone.tension(0.10)).isCloseTo(Math.hypot(0.10 * Math.pow(2, 0.463), 0.5 * slope), within(1e-6));
        assertThat(lone.tension(0.40)).isLessThan(0.10);
    }

    private static double bent(double k, double x) {
        return Math.log((Math.exp(k * x) - 1) / (Math.exp(k) - 1));
    }

    /** A single reading far from the strain asked for does not count as weighed; one beside it does; an assumed curve never. */
    @Test
    void farOutIsNotWeighed() {
        assertThat(new CurveSpread(1, 0.80, false, false, false, false).tension(0.03))
                .isGreaterThan(CurveSpread.WEIGHED);
        assertThat(new CurveSpread(1, 0.20, false, false, false, false).tension(0.18))
                .isLessThan(CurveSpread.WEIGHED);
        assertThat(CurveSpread.of(LoadCurve.assumed(0.6)).tension(0.2)).isGreaterThan(CurveSpread.WEIGHED);
    }

    /** Smooth in the strain, and more readings never make it wider. */
    @Test
    void itChangesLittleByLittle() {
        for (int readings = 0; readings <= 4; readings++) {
            CurveSpread known = new CurveSpread(readings, 0.20, false, false, false, false);
            for (double e = 0; e < 0.6; e += 0.001) {
                assertThat(known.tension(e + 0.001)).isCloseTo(known.tension(e), within(0.01));
            }
        }
        List<Double> at10 = new ArrayList<>();
        for (int readings = 3; readings >= 0; readings--) {
            at10.add(new CurveSpread(readings, 0.20, false, false, false, false).tension(0.10));
        }
        assertThat(at10).isSorted();
    }

    /** What is known besides only narrows it. */
    @Test
    void knowingMoreNarrows() {
        double nothing = new CurveSpread(3, 0.2, false, false, false, false).worn(0.15);
        assertThat(new CurveSpread(3, 0.2, true, false, false, false).worn(0.15))
                .isLessThan(nothing);
        assertThat(new CurveSpread(3, 0.2, false, true, false, false).worn(0.15))
                .isLessThan(nothing);
        assertThat(new CurveSpread(3, 0.2, false, false, true, false).worn(0.15))
                .isLessThan(nothing);
        assertThat(new CurveSpread(3, 0.2, false, false, false, true).worn(0.15))
                .isLessThan(nothing);
    }
}
