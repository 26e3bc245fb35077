package stretchwright.body;

import java.util.Arrays;

/**
 * Girths from the waist down to the ankle: round the whole body above the crotch, round one leg below it; the one
 * profile that draft and fit share.
 *
 * <p>In: a body. Out: girth in mm at a height in mm above the floor; for a leg above the crotch and below the ankle level
 * the girth of that end. Promise: smooth, through the measured girths, no bulge or hollow that was not measured. Maths:
 * monotone piecewise cubic interpolation (Fritsch and Carlson, SIAM J. Numer. Anal. 17, 1980; slopes after Fritsch and
 * Butland, SIAM J. Sci. Stat. Comput. 5, 1984).
 */
public final class GirthProfile {
    /**
     * The thigh girth is taken at the gluteal furrow, below the crotch by 27.1 mm at a crotch height of 771 mm (mean of
     * 1762 women of 1988) and 22.8 mm at 837 (1410 men): 3.5 and 2.7 % of it, 3 % here.
     */
    static final double FURROW_BELOW_CROTCH = 0.03;

    /** From the furrow up to the crotch the thigh grows as it does below, but by no more than this (no source). */
    private static final double MOST_GROWTH_TO_CROTCH = 0.05;

    private final double[] heights;
    private final double[] girths;
    private final double[] slopes;
    private final TrunkProfile trunk;

    private GirthProfile(double[] heights, double[] girths, TrunkProfile trunk) {
        for (int i = 1; i < heights.length; i++) {
            if (!(heights[i] > heights[i - 1])) {
                throw new IllegalArgumentException(
                        "the levels of a leg must rise from ankle to crotch: " + Arrays.toString(heights));
            }
        }
        this.heights = heights;
        this.girths = girths;
        this.slopes = slopes(heights, girths);
        this.trunk = trunk;
    }

    public static GirthProfile of(Body body) {
        double crotch = body.mm(Measure.CROTCH_HEIGHT);
        double knee = body.mm(Measure.KNEE_HEIGHT);
        double middle = (crotch + knee) / 2;
        double furrow = furrow(body);
        double thigh = body.mm(Measure.THIGH_GIRTH);
        double mid = body.mm(Measure.MID_THIGH_GIRTH);
        double growth = (thigh - mid) / (furrow - middle) * (crotch - furrow);
        double top = thigh + Math.min(Math.max(0, growth), MOST_GROWTH_TO_CROTCH * thigh);
        return new GirthProfile(
                new double[] {body.mm(Measure.ANKLE_HEIGHT), body.mm(Measure.CALF_HEIGHT), knee, middle, furrow, crotch
                },
                new double[] {
                    body.mm(Measure.ANKLE_GIRTH),
                    body.mm(Measure.CALF_GIRTH),
                    body.mm(Measure.KNEE_GIRTH),
                    mid,
                    thigh,
                    top
                },
                TrunkProfile.of(body));
    }

    /** Height of the seat fold, at which the thigh girth is taken, mm. */
    public static double furrow(Body body) {
        double crotch = body.mm(Measure.CROTCH_HEIGHT);
        double middle = (crotch + body.mm(Measure.KNEE_HEIGHT)) / 2;
        return crotch - Math.min(FURROW_BELOW_CROTCH * crotch, (crotch - middle) / 2);
    }

    /** Girth round the whole body, mm, from the waist through the hip to the crotch; the nearest end beyond them. */
    public double wholeGirthAt(double height) {
        return trunk.girthAt(height);
    }

    /** Girth of one leg, mm, at a height above the floor, mm. */
    public double girthAt(double height) {
        int last = heights.length - 1;
        if (height <= heights[0]) {
            return girths[0];
        }
        if (height >= heights[last]) {
            return girths[last];
        }
        int i = 0;
        while (height > heights[i + 1]) {
            i++;
        }
        double h = heights[i + 1] - heights[i];
        double t = (height - heights[i]) / h;
        double rest = 1 - t;
        return rest * rest * (1 + 2 * t) * girths[i]
                + t * t * (3 - 2 * t) * girths[i + 1]
                + h * t * rest * (rest * slopes[i] - t * slopes[i + 1]);
    }

    private static double[] slopes(double[] x, double[] y) {
        int n = x.length;
        double[] secant = new double[n - 1];
        for (int i = 0; i + 1 < n; i++) {
            secant[i] = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
        }
        double[] slope = new double[n];
        slope[n - 1] = secant[n - 2];
        for (int i = 1; i + 1 < n; i++) {
            slope[i] = inner(x[i] - x[i - 1], secant[i - 1], x[i + 1] - x[i], secant[i]);
        }
        return slope; // level at the ankle, where the girth is smallest
    }

    /** Weighted harmonic mean of the two secants; level where they disagree in sign. */
    private static double inner(double before, double secantBefore, double after, double secantAfter) {
        if (secantBefore * secantAfter <= 0) {
            return 0;
        }
        double w1 = 2 * after + before;
        double w2 = after + 2 * before;
        return (w1 + w2) / (w1 / secantBefore + w2 / secantAfter);
    }
}
