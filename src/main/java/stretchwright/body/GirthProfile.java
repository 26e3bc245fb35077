package stretchwright.body;

import stretchwright.ground.MonotoneCurve;

/**
 * Girths from the waist down to the ankle: round the whole body above the crotch, round one leg below it; the one
 * profile that draft and fit share.
 *
 * <p>In: a body. Out: girth in mm at a height in mm above the floor; for a leg above the crotch and below the ankle level
 * the girth of that end. Promise: smooth, through the measured girths, no bulge or hollow that was not measured
 * ({@link MonotoneCurve}).
 */
public final class GirthProfile {
    /**
     * The thigh girth is taken at the gluteal furrow, below the crotch by 27.1 mm at a crotch height of 771 mm (mean of
     * 1762 women of 1988) and 22.8 mm at 837 (1410 men): 3.5 and 2.7 % of it, 3 % here.
     */
    static final double FURROW_BELOW_CROTCH = 0.03;

    /** From the furrow up to the crotch the thigh grows as it does below, but by no more than this (no source). */
    private static final double MOST_GROWTH_TO_CROTCH = 0.05;

    /** Of one leg; level at the ankle, where the girth is smallest. */
    private final MonotoneCurve leg;

    private final TrunkProfile trunk;

    private GirthProfile(double[] heights, double[] girths, TrunkProfile trunk) {
        this.leg = new MonotoneCurve(heights, girths);
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
        return leg.at(height);
    }
}
