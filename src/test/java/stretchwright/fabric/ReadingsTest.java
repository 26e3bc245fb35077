package stretchwright.fabric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fold test, wrap test and load curve; worked examples W1, W2 and W4 of our trade values, and properties. */
class ReadingsTest {
    /** 4 to 6 in is 50 %, to 5 3/8 is 34.375 %, to 4 3/4 is 18.75 % (a cloth seller's guide); 10 to 14 in is 40 %. */
    @ParameterizedTest
    @CsvSource({"4, 6, 0.5", "4, 5.375, 0.34375", "4, 4.75, 0.1875", "10, 14, 0.4"})
    void aFoldGivesItsStretch(double relaxed, double pulled, double stretch) {
        assertThat(new FoldTest(relaxed, pulled, relaxed).stretch()).isCloseTo(stretch, within(1e-12));
    }

    /** 100, 160, 102.5: stretch 60 %, growth 2.5 %, recovery 57.5 / 60 = 95.83 % (derived). */
    @Test
    void aFoldGivesGrowthAndRecovery() {
        FoldTest fold = new FoldTest(100, 160, 102.5);
        assertThat(fold.stretch()).isCloseTo(0.60, within(1e-12));
        assertThat(fold.growth()).isCloseTo(0.025, within(1e-12));
        assertThat(fold.recovery()).isCloseTo(0.958333, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"100, 160, 99", "100, 160, 161", "100, 100, 100", "100, 90, 100", "0, 10, 5", "100, NaN, 100"})
    void whatCannotBeIsNoFold(double relaxed, double pulled, double rested) {
        assertThatThrownBy(() -> new FoldTest(relaxed, pulled, rested)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Hip 960, pinned 840: 12.5 % off (a maker's way; arithmetic derived). A quarter of the stretch: 57.1 %. */
    @Test
    void aWrapGivesAReductionAndAnAssumedStretch() {
        WrapTest wrap = new WrapTest(960, 840);
        assertThat(wrap.reduction()).isCloseTo(0.125, within(1e-12));
        assertThat(wrap.strain()).isCloseTo(1 / 7.0, within(1e-12));
        assertThat(wrap.assumedStretch()).isCloseTo(4 / 7.0, within(1e-12));
        assertThatThrownBy(() -> new WrapTest(960, 960)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theCurveRunsThroughAnyReadingsWithoutABumpBetweenThem() {
        for (int seed = 0; seed < 300; seed++) {
            List<LoadCurve.Reading> readings = readings(new Random(seed));
            LoadCurve curve = LoadCurve.through(readings);
            double e = 0;
            double t = 0;
            for (LoadCurve.Reading r : readings) {
                assertThat(curve.tension(r.extension())).isCloseTo(r.tension(), within(1e-9 * r.tension()));
                double last = t;
                for (int i = 1; i <= 50; i++) {
                    double now = curve.tension(e + (r.extension() - e) * i / 50);
                    // between two readings neither falls nor leaves what they span
                    assertThat(now).as("seed " + seed).isBetween(last - 1e-9, r.tension() * (1 + 1e-9));
                    last = now;
                }
                e = r.extension();
                t = r.tension();
            }
            assertThat(curve.covers(e)).isTrue();
            assertThat(curve.covers(e * 1.0001)).isFalse();
            assertThat(curve.tension(e * 1.5)).isGreaterThan(t);
        }
    }

    @Test
    void oneReadingIsAStraightLine() {
        LoadCurve curve = LoadCurve.through(List.of(new LoadCurve.Reading(0.4, 80)));
        for (double e : new double[] {0.05, 0.1, 0.2, 0.3, 0.4, 0.6}) {
            assertThat(curve.tension(e)).isCloseTo(200 * e, within(1e-9));
        }
        assertThat(curve.covers(0.41)).isFalse();
    }

    /** p = T / r written out in N and m, against the program's N/m, mm and kPa. */
    @Test
    void pressureIsTensionOverRadiusForAnyGirthAndCurve() {
        for (int seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            LoadCurve curve = LoadCurve.through(readings(random));
            double tension = curve.tension(random.nextDouble());
            double girth = 100 + 1400 * random.nextDouble();
            double pascals = tension / (girth / 1000 / (2 * Math.PI));
            assertThat(1000 * Laplace.kilopascals(tension, girth)).isCloseTo(pascals, within(1e-9 * (1 + pascals)));
            assertThat(Laplace.tension(pascals / 1000, girth)).isCloseTo(tension, within(1e-9 * (1 + tension)));
        }
    }

    private static List<LoadCurve.Reading> readings(Random random) {
        List<LoadCurve.Reading> out = new ArrayList<>();
        double e = 0;
        double t = 0;
        for (int i = 0, n = 1 + random.nextInt(12); i < n; i++) {
            e += 0.005 + 0.2 * random.nextDouble();
            t += Math.exp(-4 + 8 * random.nextDouble());
            out.add(new LoadCurve.Reading(e, t));
        }
        return out;
    }
}
