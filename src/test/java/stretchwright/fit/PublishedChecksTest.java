package stretchwright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stretchwright.fabric.Laplace;
import stretchwright.fabric.Strain;
import stretchwright.ground.RandomStream;

/** Worked checks of the project's trade values; each names the publication behind it. */
class PublishedChecksTest {

    /** W1: fold test of Utah State University Extension, Considerations for Knit Fabrics: each inch gained on 4 is 25 %. */
    @ParameterizedTest
    @CsvSource({"4, 6, 0.50", "4, 5.375, 0.34375", "4, 4.75, 0.1875", "10, 14, 0.40"})
    void w1FoldTest(double relaxed, double stretched, double share) {
        assertThat(Strain.of(relaxed, stretched)).isCloseTo(share, within(1e-12));
    }

    /** W2: L0 100, L1 160, L2 102.5; elongation, growth and recovery as defined in EN 14704-1 (from memory). */
    @Test
    void w2StretchGrowthRecovery() {
        assertThat(Strain.of(100, 160)).isCloseTo(0.60, within(1e-12));
        assertThat(Strain.of(100, 102.5)).isCloseTo(0.025, within(1e-12));
        assertThat(Strain.recovery(100, 160, 102.5)).isCloseTo(0.9583, within(5e-5));
    }

    /** W3: standing 17.65 % and 20 % of skin extension on top, derived by hand. */
    @Test
    void w3StrainOnStrain() {
        assertThat(Strain.then(0.1765, 0.20)).isCloseTo(0.412, within(5e-4));
    }

    /** W4: body 960, cut 864: strain 11.11 %, derived by hand. */
    @Test
    void w4StrainOfATenPercentReduction() {
        assertThat(Strain.of(864, 960)).isCloseTo(0.1111, within(5e-5));
    }

    /** W22: ankle 215.7, heel-ankle 310.3 (means of ANSUR 1988 women), cuff 10 % smaller; derived by hand. */
    @Test
    void w22ACuffTenPercentSmallerThanTheAnkleMustPassTheHeel() {
        double cuff = 215.7 * (1 - 0.10);
        assertThat(cuff).isCloseTo(194.1, within(0.05));
        assertThat(Strain.of(cuff, 310.3)).isCloseTo(0.598, within(5e-4));
    }

    /**
     * W5: 1 kgf on a band of 10 cm (98.07 N/m) round 200 mm: 3081 Pa, 23.11 mmHg; the bandage form of Laplace's law
     * (Thomas, EWMA Journal 2003, P = 4620 N T / (C W)) gives 23.1.
     */
    @Test
    void w5BandageForm() {
        double kPa = Laplace.kilopascals(98.0665, 200);
        assertThat(kPa * 1000).isCloseTo(3081, within(0.5));
        assertThat(Laplace.toMmHg(kPa)).isCloseTo(4620.0 * 1 / (20 * 10), within(0.05));
    }

    /** W6: 13.5 mmHg at a 215.7 mm ankle (Ashby et al., Sports Engineering 24:12, 2021) takes 61.8 N/m. */
    @Test
    void w6TensionBehindAMeasuredPressure() {
        double tension = Laplace.tension(Laplace.fromMmHg(13.5), 215.7);
        assertThat(tension).isCloseTo(61.8, within(0.05));
        assertThat(tension * 0.050).isCloseTo(3.09, within(0.005));
    }

    /** W7: the curve of a soft knit (15 gf/cm at 20 %) on ankle, calf and thigh; Anthropometry, Apparel Sizing and Design p. 344. */
    @ParameterizedTest
    @CsvSource({
        "14.71, 215.7, 3.21", "14.71, 373, 1.86", "14.71, 616, 1.12",
        "37.59, 215.7, 8.21", "37.59, 373, 4.75", "37.59, 616, 2.88"
    })
    void w7PressureFallsAsTheGirthGrows(double tension, double girth, double mmHg) {
        // the table rounds to 0.01; 14.71 N/m on 616 mm comes out at 1.125
        assertThat(Laplace.toMmHg(Laplace.kilopascals(tension, girth))).isCloseTo(mmHg, within(0.0061));
    }

    /** W8: 18, 21, 32, 49 mmHg in kPa; the class table RAL-GZ 387 prints 2.4, 2.8, 4.3, 6.5. */
    @ParameterizedTest
    @CsvSource({"18, 2.400, 2.4", "21, 2.800, 2.8", "32, 4.266, 4.3", "49, 6.533, 6.5"})
    void w8CompressionClasses(double mmHg, double kPa, double printed) {
        assertThat(Laplace.fromMmHg(mmHg)).isCloseTo(kPa, within(0.0005)).isCloseTo(printed, within(0.05));
    }

    /** W13: straight lockstitch, 2.5 of thread per length in two threads, thread that stretches 18 %: 47.5 %, derived by hand. */
    @Test
    void w13CeilingOfALockstitch() {
        assertThat(Seams.ceiling(2.5, 2, 0.18)).isCloseTo(0.475, within(1e-12));
        assertThat(stretchwright.pattern.Stitch.LOCKSTITCH.extensibility()).isLessThan(0.475);
    }

    /** W15: 250 g/m2, 30 % across, 10 % along: L 1.43, 174.8 g/m2, light 1 % at rest 3.99 %; derived by hand. */
    @Test
    void w15ThinnedCloth() {
        double areal = Strain.then(0.30, 0.10);
        assertThat(1 + areal).isCloseTo(1.43, within(1e-12));
        assertThat(Covers.thinned(250, areal)).isCloseTo(174.8, within(0.05));
        assertThat(Covers.through(0.01, areal)).isCloseTo(0.0399, within(0.00005));
    }

    /** W20: 1000 mm finished at 5 and 3 % are 1052.6 and 1030.9 mm to cut, derived by hand. */
    @ParameterizedTest
    @CsvSource({"0.05, 1052.6", "0.03, 1030.9"})
    void w20WhatToCutForAFinishedLength(double shrinkage, double cut) {
        assertThat(Washing.toCut(1000, shrinkage)).isCloseTo(cut, within(0.05));
        assertThat(Washing.washed(Washing.toCut(1000, shrinkage), shrinkage)).isCloseTo(1000, within(1e-9));
    }

    @Test
    void tensionAndPressureUndoEachOther() {
        RandomStream random = RandomStream.of(7, "laplace");
        for (int i = 0; i < 1000; i++) {
            double tension = random.between(0.1, 500);
            double girth = random.between(100, 1500);
            assertThat(Laplace.tension(Laplace.kilopascals(tension, girth), girth))
                    .isCloseTo(tension, within(1e-9));
        }
    }
}
