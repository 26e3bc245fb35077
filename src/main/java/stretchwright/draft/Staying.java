package stretchwright.draft;

import java.util.List;
import java.util.OptionalDouble;
import stretchwright.body.Comfort;
import stretchwright.body.Measure;
import stretchwright.fabric.AsWorn;
import stretchwright.fabric.Laplace;
import stretchwright.fabric.Layers;
import stretchwright.fabric.PressureSpread;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;
import stretchwright.settle.Elastic;
import stretchwright.settle.Settles;
import stretchwright.settle.TopTrial;
import stretchwright.settle.TopTrials;

/**
 * Finds what makes top and hem settle where they were asked for: a firm band, the waist edge drawn above its place by
 * what it settles, or an elastic where the maker leaves that to the draft; along the leg less is taken off where
 * the hem would rise. What cannot be had within these bounds is left to the fit check. Maths: docs/maths/draft.md, "Staying".
 */
final class Staying {
    /** So far a waist edge may settle before something is changed, mm: half of what is felt (no source). */
    private static final double WAIST = 8;

    /** And the back in a deep bend, mm: below what bares skin by what is not known of it (no source). */
    private static final double BACK = 15;

    /** And the hem rise, mm: more than half of what shows laces (no source). */
    private static final double HEM = 6;

    /** An edge that something holds may be drawn above its place by so much, mm: it is seen from 10 (no source). */
    private static final double UNSEEN = 8;

    /** No edge is drawn further above its place, mm (no source). */
    private static final double MOST_ABOVE = 25;

    private final Order order;
    private final TopTrials trials;

    private Staying(Order order, Pattern pattern) {
        this.order = order;
        trials = new TopTrials(pattern, order.body(), order.fabric(), order.boot(), order.style());
    }

    /** @param plain of that order, drawn as usual */
    static Stay found(Pattern plain, Order order) {
        Staying staying = new Staying(order, plain);
        Settles asDrawn = staying.trials.drawn();
        return staying.top(
                Stay.AS_USUAL.along(staying.along(asDrawn.hemUp())).seen(asDrawn.waist(), asDrawn.back()), asDrawn);
    }

    /** What is kept of the reduction along so that the hem stays. */
    private double along(double up) {
        return !hemIsFree() || up <= HEM ? 1 : HEM / up;
    }

    /** One that ends at the ankle or on the boot, and that no strap holds: higher up a bent knee may take it along. */
    private boolean hemIsFree() {
        Style style = order.style();
        boolean low = style.leg() == Style.Leg.ANKLE
                || (style.leg() == Style.Leg.OVER_BOOT
                        && reachesPastItsRise(style.lower().hem()));
        return low && style.lower().strapWidth().isEmpty();
    }

    /** A hem to the collar is drawn as much longer as it rises; one in the boot is held. */
    private static boolean reachesPastItsRise(LowerEnd.Hem hem) {
        return hem != LowerEnd.Hem.INSIDE_BOOT && hem != LowerEnd.Hem.TO_COLLAR;
    }

    /** How far what is done goes grows with the need for it, so that no point of the pattern jumps. */
    private Stay top(Stay usual, Settles asDrawn) {
        double need = Math.max(asDrawn.waist() / WAIST, asDrawn.back() / BACK) - 1;
        double share = Math.max(0, Math.min(1, need));
        if (share == 0) {
            return usual;
        }
        Stay firm = usual.firm(share);
        TopTrial trial = new TopTrial(
                0,
                OptionalDouble.of(Frame.band(order.with(firm))),
                trials.asDrawn().pull());
        if (order.style().top().band().elasticAsNeeded()) {
            TopTrial high = trial.above(share * UNSEEN);
            return firm.above(high.above()).with(isFine(trials.of(high)) ? OptionalDouble.empty() : elastic(high));
        }
        double settles = Math.max(0, trials.of(trial).waist());
        return firm.above(share * (Math.min(MOST_ABOVE, settles) + UNSEEN));
    }

    private boolean isFine(Settles s) {
        return s.waist() <= WAIST && s.back() <= BACK;
    }

    /** The narrowest that holds; the widest where none does; empty where the band has no room or the waist is pressed enough. */
    private OptionalDouble elastic(TopTrial top) {
        TopEnd.Band band = order.style().top().band();
        double girth = Frame.topGirth(order.body(), order.style());
        double cloth = top.band().orElseThrow();
        double ring = TopFinish.ring(order, cloth);
        List<Double> fitting = TopEnd.Band.ELASTICS.stream()
                .filter(w -> band.hasRoomFor(w) && isComfortable(girth, cloth, Elastic.pull(w, ring, girth)))
                .toList();
        if (fitting.isEmpty()) {
            return OptionalDouble.empty();
        }
        int least = 0;
        int most = fitting.size() - 1;
        while (least < most) {
            int middle = (least + most) / 2;
            double pull = Elastic.pull(fitting.get(middle), ring, girth);
            if (isFine(trials.of(new TopTrial(top.above(), top.band(), pull)))) {
                most = middle;
            } else {
                least = middle + 1;
            }
        }
        return OptionalDouble.of(fitting.get(least));
    }

    /** With the firm band: so far below the limit of the wearer's age that the fit check has no caution for it. */
    private boolean isComfortable(double girth, double band, double pull) {
        AsWorn curve = AsWorn.of(order.fabric(), 0);
        double strain = girth / band - 1;
        double cloth = Laplace.kilopascals(Layers.TWO * curve.tension(strain), girth);
        double elastic = Laplace.kilopascals(Elastic.tension(pull, order.style().bandHeight()), girth);
        double off = PressureSpread.strain(
                strain, girth, order.body().value(Measure.WAIST_GIRTH).spread());
        double spread = new PressureSpread(curve)
                .of(strain, off, Laplace.kilopascals(Layers.TWO, girth))
                .with(cloth, elastic, Elastic.SPREAD)
                .spread();
        return Laplace.toMmHg(cloth + elastic) * StrictMath.exp(Comfort.PLANNED_SPREADS * spread)
                <= Comfort.band(order.body().age());
    }
}
