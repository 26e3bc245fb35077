package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.Comfort;
import stretchwright.body.Measure;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Layers;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.Dimension.What;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Level;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Reason.Input;

/**
 * From a fabric's stretch and the hold to the shares taken off the body's measures; those of the leg's girths are {@link
 * Holding}'s.
 *
 * <p>A strain e is a reduction r = e / (1 + e) (trade-values section 2.1).
 *
 * @param reasons why so much is taken off
 */
record Reducing(Pattern.Reductions shares, List<Reason> reasons) {
    /** Beyond this strain standing, 20 % reduction, no handbook goes (section 2.1: 10 to 15 % for the stretchiest). */
    static final double MOST_STRAIN = 0.25;

    /** Share of the stretch across that grips at a hem: a boot needs grip and not hold, whatever hold is wanted. */
    static final double HEM_SHARE = 0.20;

    /** The band sits on soft tissue and must pass the hips: half the strain of the leg, a reduction of 10 % at most. */
    static final double BAND_SHARE_OF_LEG = 0.5;

    static final double MOST_BAND_REDUCTION = 0.10;

    /** Along the leg 0.05 at 45 % stretch and never more than 0.06 (docs/maths/draft.md, reductions). */
    static final double ALONG_PER_STRETCH = 0.0526 / 0.45;

    static final double MOST_ALONG_REDUCTION = 0.06;

    /** Along the crotch seam 0.14 at 45 %, at most 0.18, none where the cloth does not give along (same). */
    static final double CROTCH_PER_STRETCH = 0.1628 / 0.45;

    static final double MOST_CROTCH_REDUCTION = 0.18;

    /** Makers take no less than this off the crotch seam of a stretch legging (common practice, no source). */
    static final double LEAST_CROTCH_REDUCTION = 0.10;

    /** Where the waist edge cannot keep its place else, the crotch seam may use half the stretch along standing (no source). */
    static final double MOST_OF_STRETCH = 0.5;

    static final double MOST_CROTCH_AT_ALL = 0.20;

    /** Share of the stretch that an opening may use while it passes over heel or hips: an easy pull, with reserve. */
    static final double PASSING_SHARE = 0.85;

    /** A band that is 2 % shorter than the girth it lies on still stays up (common practice, no source). */
    static final double STILL_HOLDS = 0.98;

    private static final Said SOURCE = Tell.said("source.reductions");

    /** Off the leg's lengths. Who sits all day gets the full length: a bent knee needs it (common practice, no source). */
    static Ruled along(Fabric fabric, boolean seated) {
        Input stretch = Inputs.stretchAlong(fabric);
        return seated
                ? Ruled.of(0, Tell.said("rule.along-seated"), SOURCE, stretch)
                : Ruled.of(
                        Math.min(
                                MOST_ALONG_REDUCTION,
                                reduction(ALONG_PER_STRETCH * fabric.test().stretchAlong())),
                        ofStretchAlong(ALONG_PER_STRETCH, MOST_ALONG_REDUCTION),
                        SOURCE,
                        stretch);
    }

    private static Said ofStretchAlong(double factor, double most) {
        return Tell.said("rule.of-stretch-along", Part.number(factor, 4), Part.share(most));
    }

    /** @param firm share of the way to a band that is taken in as far as is comfortable, because something pulls at it */
    static Reducing of(Body body, Fabric fabric, Ruled along, Holding holding, double firm) {
        double hip = holding.at(Level.Name.HIP).reduction();
        Ruled crotch = crotch(fabric);
        Ruled band = band(body, fabric, hip, firm);
        Ruled hem = hem(fabric);
        return new Reducing(
                new Pattern.Reductions(hip, along.value(), crotch.value(), band.value(), hem.value()),
                List.of(
                        along.percent(Dimension.of(What.REDUCTION_ALONG)),
                        crotch.percent(Dimension.of(What.REDUCTION_ALONG_THE_CROTCH_SEAM)),
                        band.percent(Dimension.of(What.REDUCTION_OF_THE_WAISTBAND)),
                        hem.percent(Dimension.of(What.REDUCTION_AT_HEM_AND_BOOT))));
    }

    /** Off the crotch seam and off the rise as much as brings the waist edge to its place. */
    Reducing given(double crotchTaken, double riseTaken, Fabric fabric) {
        Ruled crotch = Ruled.of(
                crotchTaken,
                Tell.said("rule.crotch-gives", Part.share(MOST_OF_STRETCH), Part.share(MOST_CROTCH_AT_ALL)),
                SOURCE,
                Inputs.stretchAlong(fabric),
                Inputs.share(Dimension.of(What.REDUCTION_ALONG_THE_CROTCH_SEAM_AS_USUAL), shares.crotch()));
        Ruled rise = Ruled.of(
                riseTaken,
                Tell.said("rule.rise-gives"),
                SOURCE,
                Inputs.share(Dimension.of(What.REDUCTION_ALONG), shares.along()));
        List<Reason> all = new ArrayList<>();
        for (Reason r : reasons) {
            if (r.dimension().equals(Dimension.of(What.REDUCTION_ALONG_THE_CROTCH_SEAM))) {
                all.add(r.of(Dimension.of(What.REDUCTION_ALONG_THE_CROTCH_SEAM_AS_USUAL)));
                all.add(crotch.percent(Dimension.of(What.REDUCTION_ALONG_THE_CROTCH_SEAM)));
                all.add(rise.percent(Dimension.of(What.REDUCTION_OF_THE_RISE)));
            } else {
                all.add(r);
            }
        }
        return new Reducing(shares.given(riseTaken, crotchTaken), all);
    }

    private static Ruled crotch(Fabric fabric) {
        return Ruled.of(
                Math.min(
                        MOST_CROTCH_REDUCTION,
                        reduction(CROTCH_PER_STRETCH * fabric.test().stretchAlong())),
                ofStretchAlong(CROTCH_PER_STRETCH, MOST_CROTCH_REDUCTION),
                SOURCE,
                Inputs.stretchAlong(fabric));
    }

    private static Ruled band(Body body, Fabric fabric, double hip, double firm) {
        double most = Math.min(reduction(comfortableBand(body, fabric)), MOST_BAND_REDUCTION);
        double usual = Math.min(most, reduction(BAND_SHARE_OF_LEG * hip / (1 - hip)));
        double share = Math.max(1 - STILL_HOLDS, usual + firm * (most - usual));
        return Ruled.of(
                share,
                firm > 0
                        ? Tell.said("rule.firm-band", Part.share(MOST_BAND_REDUCTION))
                        : Tell.said(
                                "rule.of-strain-at-hip",
                                Part.number(BAND_SHARE_OF_LEG, 4),
                                Part.share(MOST_BAND_REDUCTION)),
                SOURCE,
                Inputs.share(Dimension.of(What.REDUCTION_ACROSS), hip));
    }

    private static Ruled hem(Fabric fabric) {
        return Ruled.of(
                reduction(Math.min(MOST_STRAIN, HEM_SHARE * fabric.test().stretchAcross())),
                Tell.said("rule.grip-at-hem", Part.number(HEM_SHARE, 4), Part.share(MOST_STRAIN)),
                SOURCE,
                Inputs.stretchAcross(fabric));
    }

    /** Strain at which a band of two layers presses as hard as is still comfortable; known where the curve was measured. */
    private static double comfortableBand(Body body, Fabric fabric) {
        return fabric.test().loadAcross().isAssumed()
                ? MOST_STRAIN
                : Comfortable.strain(body, fabric, Measure.WAIST_GIRTH, Comfort.band(body.age()), Layers.TWO, 0);
    }

    static double share(Hold.Named hold) {
        return switch (hold) {
            case LIGHT -> 1.0 / 5;
            case MEDIUM -> 1.0 / 4;
            case FIRM -> 1.0 / 3;
        };
    }

    static double reduction(double strain) {
        return strain / (1 + strain);
    }

    /** The narrowest width that still lets a girth through at an easy pull, where it can stretch by so much. */
    static double narrowestFor(double girth, double stretch) {
        return girth / (1 + PASSING_SHARE * stretch);
    }
}
