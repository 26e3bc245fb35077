package stretchwright.draft;

import java.util.List;
import java.util.Locale;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Reason.Input;

/** Why so much is taken off the body's measures. */
final class ReductionReasons {
    static final String ACROSS = "reduction across";
    static final String ALONG = "reduction along";
    static final String CROTCH = "reduction along the crotch seam";
    static final String BAND = "reduction of the waistband";
    static final String HEM = "reduction at hem and boot";

    private static final String SOURCE = "docs/maths/draft.md, Reductions";

    private ReductionReasons() {}

    static List<Reason> of(Order order) {
        Pattern.Reductions r = order.reductions();
        Input across = new Input("stretch across", 100 * order.fabric().stretchAcross(), "%", "fabric");
        Input along = new Input("stretch along", 100 * order.fabric().stretchAlong(), "%", "fabric");
        return List.of(
                reason(
                        ALONG,
                        r.along(),
                        order.body().seated()
                                ? "who sits all day gets the leg's full length: a bent knee needs it"
                                : "e = " + number(Reducing.ALONG_PER_STRETCH)
                                        + " x stretch along; e / (1 + e), at most "
                                        + percent(Reducing.MOST_ALONG_REDUCTION),
                        along),
                reason(
                        CROTCH,
                        r.crotch(),
                        "e = " + number(Reducing.CROTCH_PER_STRETCH) + " x stretch along; e / (1 + e), at most "
                                + percent(Reducing.MOST_CROTCH_REDUCTION),
                        along),
                reason(
                        BAND,
                        r.waistband(),
                        "e = " + number(Reducing.BAND_SHARE_OF_LEG) + " x the strain at the hip; e / (1 + e), at most "
                                + percent(Reducing.MOST_BAND_REDUCTION),
                        new Input(ACROSS, 100 * r.across(), "%", ACROSS)),
                reason(
                        HEM,
                        r.hem(),
                        "a boot needs grip and not hold: e = " + number(Reducing.HEM_SHARE)
                                + " x stretch across, at most " + percent(Reducing.MOST_STRAIN) + "; e / (1 + e)",
                        across));
    }

    private static Reason reason(String name, double share, String rule, Input... inputs) {
        return new Reason(name, 100 * share, "%", rule, List.of(inputs), SOURCE);
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.4g", value);
    }
}
