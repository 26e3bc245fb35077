package stretchwright.draft;

import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.TrunkProfile;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;

/**
 * The upright lines of the top: half the hip, where centre front and centre back stand, how the waist is shaped
 * (drafting method section 2).
 *
 * @param hip half of the flat hip
 * @param slantFront how far the centre front leans in from hip to waist; negative: out, where the waist is larger
 * @param slantBack the same for the centre back
 */
record Frame(double hip, double slantFront, double slantBack) {
    private static final double FRONT_SHARE = 0.48;
    private static final double FRONT_EXTENSION_SHARE = 0.32;

    /** The crotch extensions together are at least this share of half the hip. */
    private static final double LEAST_EXTENSION = 0.12;

    private static final double FRONT_TAKES = 0.15;
    private static final double FRONT_AT_MOST = 0.035;
    private static final double BACK_TAKES = 0.45;
    private static final double BACK_AT_MOST = 0.09;

    static Frame of(Body body, Style style, Pattern.Reductions r) {
        double tight = 1 - r.across();
        double hip = body.mm(Measure.HIP_GIRTH) / 2 * tight;
        double spare = hip - topGirth(body, style) / 2 * tight;
        return new Frame(
                hip, within(FRONT_TAKES * spare, FRONT_AT_MOST * hip), within(BACK_TAKES * spare, BACK_AT_MOST * hip));
    }

    /** Girth of the body where the leg's top edge sits: the waist, or in proportion towards the hip below it. */
    static double topGirth(Body body, Style style) {
        return TrunkProfile.of(body).girthBelowWaist(style.dropBelowWaist());
    }

    private static double within(double value, double limit) {
        return Math.max(-limit, Math.min(limit, value));
    }

    /** Width the leg wants on the crotch line. */
    double crotchWidth(double thigh) {
        return Math.max(thigh, hip * (1 + LEAST_EXTENSION));
    }

    double hipFront() {
        return -FRONT_SHARE * hip;
    }

    double hipBack() {
        return (1 - FRONT_SHARE) * hip;
    }

    double waistFront() {
        return hipFront() + slantFront;
    }

    double waistBack() {
        return hipBack() - slantBack;
    }

    /** The middle of a crotch line of the given width. */
    double crotchMiddle(double width) {
        double extension = width - hip;
        double front = hipFront() - FRONT_EXTENSION_SHARE * extension;
        return front + width / 2;
    }
}
