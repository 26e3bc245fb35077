package stretchwright.settle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stretchwright.balance.Motion;
import stretchwright.body.Body;
import stretchwright.body.GirthGrowth;
import stretchwright.body.Measure;
import stretchwright.fabric.CurveSpread;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Hung;
import stretchwright.fabric.Learnt.What;
import stretchwright.fabric.LoadCurve;
import stretchwright.ground.Chance;

/** One standard deviation to either side of each {@link Guess}: sources in docs/maths/balance.md, "Constants". */
final class Unsure {
    static final double SKIN = StrictMath.log(0.6 / 0.27) / 2 / Chance.EIGHT_IN_TEN;
    static final double BOOT = StrictMath.log(0.45 / 0.2) / 2 / Chance.EIGHT_IN_TEN;
    static final double LAYERS = 0.2 / Chance.EIGHT_IN_TEN;
    static final double NARROWING = 0.15 / Chance.EIGHT_IN_TEN;
    static final double SEAM = StrictMath.log(80.0 / 30) / 2 / Chance.EIGHT_IN_TEN;
    static final double BACK_RISE = 0.08 / Chance.EIGHT_IN_TEN;

    /** Of the two load curves of one cloth against each other where neither was weighed (no source). */
    static final double ONE_AGAINST_THE_OTHER = 0.3;

    /** Strain at which the spread of a weighed curve is taken. */
    static final double AS_WORN = 0.10;

    /** Of a narrowing that was read: 1 mm on the width of the strip. */
    static final double NARROWING_READ = 0.03;

    /**
     * What six readings of a first pair leave of a spread: the least that they taught in four examples (docs/maths/fit.md, "First
     * pair"). Of all others they leave as good as all.
     */
    private static final Map<What, Double> LEFT =
            Map.of(What.BACK_RISE, 0.65, What.PULL_ALONG, 0.83, What.SKIN, 0.91, What.CROTCH_SEAM, 0.94);

    private final List<Guess[]> pairs = new ArrayList<>();
    private final Fabric fabric;

    private Unsure(Fabric fabric) {
        this.fabric = fabric;
    }

    /** Share of a spread that is left: all of it where nothing was learnt. */
    private double left(What what) {
        return fabric.learnt().values().containsKey(what) ? LEFT.getOrDefault(what, 1.0) : 1;
    }

    /** Each guess too low and too high, all others in their middle. */
    static List<Guess[]> about(Guess middle, Body body, Fabric fabric) {
        Unsure u = new Unsure(fabric);
        double log = StrictMath.exp(u.left(What.SKIN) * SKIN);
        u.pair(
                middle.frictions(middle.skin() / log, middle.boot()),
                middle.frictions(middle.skin() * log, middle.boot()));
        double boot = StrictMath.exp(BOOT);
        u.pair(
                middle.frictions(middle.skin(), middle.boot() / boot),
                middle.frictions(middle.skin(), middle.boot() * boot));
        u.sewn(middle);
        u.cloth(middle);
        u.measured(middle, body);
        u.bent(middle);
        return u.pairs;
    }

    private void pair(Guess low, Guess high) {
        pairs.add(new Guess[] {low, high});
    }

    private void sewn(Guess g) {
        double seam = StrictMath.exp(left(What.CROTCH_SEAM) * SEAM);
        double pull = StrictMath.exp(Elastic.SPREAD);
        pair(g.sewn(g.layers() - LAYERS, g.seam(), g.elastic()), g.sewn(g.layers() + LAYERS, g.seam(), g.elastic()));
        pair(g.sewn(g.layers(), g.seam() / seam, g.elastic()), g.sewn(g.layers(), g.seam() * seam, g.elastic()));
        pair(g.sewn(g.layers(), g.seam(), g.elastic() / pull), g.sewn(g.layers(), g.seam(), g.elastic() * pull));
    }

    private void cloth(Guess g) {
        LoadCurve across = fabric.test().loadAcross();
        LoadCurve along = fabric.test().loadAlong();
        double apart = across.isAssumed() || along.isAssumed()
                ? ONE_AGAINST_THE_OTHER
                : Math.hypot(
                        CurveSpread.of(across).tension(AS_WORN),
                        CurveSpread.of(along).tension(AS_WORN));
        double times = StrictMath.exp(left(What.PULL_ALONG) * apart / 2);
        pair(
                g.cloth(g.across() / times, g.along() * times, g.narrowing()),
                g.cloth(g.across() * times, g.along() / times, g.narrowing()));
        double narrows = fabric.test().hung().across().narrowing().isPresent() ? NARROWING_READ : NARROWING;
        pair(
                g.cloth(g.across(), g.along(), Math.max(0, g.narrowing() - narrows)),
                g.cloth(g.across(), g.along(), Math.min(Hung.MOST_NARROWING, g.narrowing() + narrows)));
    }

    private void measured(Guess g, Body body) {
        double crotch = body.value(Measure.TOTAL_CROTCH_LENGTH).spread();
        double waist = body.value(Measure.WAIST_GIRTH).spread();
        pair(g.measured(g.crotch() - crotch, g.waist()), g.measured(g.crotch() + crotch, g.waist()));
        pair(g.measured(g.crotch(), g.waist() - waist), g.measured(g.crotch(), g.waist() + waist));
    }

    private void bent(Guess g) {
        Motion m = g.bend();
        pair(
                g.bent(m.withGirths(m.hip() - GirthGrowth.SPREAD, m.knee() - GirthGrowth.SPREAD)),
                g.bent(m.withGirths(m.hip() + GirthGrowth.SPREAD, m.knee() + GirthGrowth.SPREAD)));
        double rise = left(What.BACK_RISE) * BACK_RISE;
        pair(g.bent(m.withRiseBack(m.riseBack() - rise)), g.bent(m.withRiseBack(m.riseBack() + rise)));
    }
}
