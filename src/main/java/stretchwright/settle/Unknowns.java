package stretchwright.settle;

import stretchwright.balance.Motion;
import stretchwright.body.Body;
import stretchwright.body.GirthGrowth;
import stretchwright.body.Measure;
import stretchwright.fabric.CurveSpread;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Hung;
import stretchwright.fabric.LoadCurve;

/** A {@link Guess} as numbers in steps of one standard deviation from the middle guess, each of them known as well as the other. */
final class Unknowns {
    /** Of the skin's growth lengthwise over knee and seat: 5 points (docs/maths/fit.md, "First pair"). */
    private static final double SKIN_ALONG = 0.05;

    private static final double LEAST_LAYERS = 1;
    /** Beyond so many standard deviations nothing is believed of six readings. */
    static final double MOST = 3;

    static final int COUNT = 15;

    private final Guess middle;
    private final double curve;
    private final double apart;
    private final double narrowing;
    private final double crotch;
    private final double waist;

    Unknowns(Guess middle, Body body, Fabric fabric) {
        this.middle = middle;
        LoadCurve across = fabric.test().loadAcross();
        LoadCurve along = fabric.test().loadAlong();
        boolean weighed = !across.isAssumed() && !along.isAssumed();
        double spread = CurveSpread.of(across).tension(Unsure.AS_WORN);
        apart = weighed
                ? Math.hypot(spread, CurveSpread.of(along).tension(Unsure.AS_WORN))
                : Unsure.ONE_AGAINST_THE_OTHER;
        curve = Math.sqrt(Math.max(spread * spread / 4, spread * spread - apart * apart / 4));
        narrowing = fabric.test().hung().across().narrowing().isPresent() ? Unsure.NARROWING_READ : Unsure.NARROWING;
        crotch = body.value(Measure.TOTAL_CROTCH_LENGTH).spread();
        waist = body.value(Measure.WAIST_GIRTH).spread();
    }

    /** The guess at so many standard deviations from the middle. */
    Guess at(double[] x) {
        double both = StrictMath.exp(curve * x[5]);
        double ratio = StrictMath.exp(apart * x[6] / 2);
        double narrows = Math.max(0, Math.min(Hung.MOST_NARROWING, middle.narrowing() + narrowing * x[3]));
        Motion m = middle.bend();
        Motion bend = m.withGirths(m.hip() + GirthGrowth.SPREAD * x[10], m.knee() + GirthGrowth.SPREAD * x[11])
                .withSkin(m.kneeFront() + SKIN_ALONG * x[12], m.seat() + SKIN_ALONG * x[13])
                .withRiseBack(m.riseBack() + Unsure.BACK_RISE * x[14]);
        return middle.frictions(
                        middle.skin() * StrictMath.exp(Unsure.SKIN * x[0]),
                        middle.boot() * StrictMath.exp(Unsure.BOOT * x[1]))
                .cloth(middle.across() * both * ratio, middle.along() * both / ratio, narrows)
                .sewn(
                        Math.max(LEAST_LAYERS, middle.layers() + Unsure.LAYERS * x[2]),
                        middle.seam() * StrictMath.exp(Unsure.SEAM * x[4]),
                        middle.elastic() * StrictMath.exp(Elastic.SPREAD * x[7]))
                .measured(middle.crotch() + crotch * x[8], middle.waist() + waist * x[9])
                .bent(bend);
    }
}
