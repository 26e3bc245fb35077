package stretchwright.fabric;

import java.util.OptionalDouble;
import stretchwright.ground.Roots;

/**
 * How hard a cloth pulls round a body where it lies stretched along by so much: the curve of its strip, and what was read of the
 * strip besides. Where nothing was, it is the curve itself.
 *
 * <p>Held along too a cloth pulls harder than a strip that narrows freely, Tx = T(ex) + nu Ty(ey + nu ex); worn it pulls less
 * hard than when first stretched. The usual two nearly cancel, so that both are left out until the narrowing was read
 * (docs/maths/fit.md, "Ranges").
 */
public final class AsWorn {
    /** What half an hour under the full weight usually leaves of the pull (common practice, no source). */
    private static final double USUAL_RELAXED = 0.92;

    private static final double USUAL_WAY_BACK = CurveSpread.HOURS_LATER / USUAL_RELAXED;

    /** Held from narrowing, a cloth may be stiffer by no more than this: as in the balance. */
    private static final double MOST_STIFFENED = 0.5;

    /** Where the first stiffness of a curve is taken. */
    private static final double FIRST = 0.01;

    private final LoadCurve across;
    private final CurveSpread known;
    private final double along;
    private final double worn;
    private final boolean narrowed;
    private final Pull pull;

    /** The pull along, as far as it tells on that across: narrowing, and how curve and strain along are to be taken. */
    private record Pull(double narrowing, LoadCurve curve, double longer) {
        /** @param longer strain of the curve that is 1 of the cloth's along */
        static Pull of(double narrowing, LoadCurve curve, double longer, LoadCurve across) {
            double stiffer = curve.tension(longer * FIRST) / across.tension(FIRST);
            double share = 1 - Math.min(MOST_STIFFENED, narrowing * narrowing * stiffer);
            return new Pull(narrowing, curve, longer / share);
        }

        /** So much is added across, N/m. */
        double added(double strain, double along) {
            return narrowing * curve.tension(longer * (along + narrowing * strain));
        }
    }

    private AsWorn(Fabric.Test test, double along) {
        across = test.loadAcross();
        this.along = along;
        Hung.Way way = test.hung().across();
        narrowed = way.narrowing().isPresent();
        boolean alongRead = narrowed && !across.isAssumed() && !test.loadAlong().isAssumed();
        known = CurveSpread.of(test);
        worn = over(way.wayBack(), USUAL_WAY_BACK) * over(way.relaxed(), USUAL_RELAXED);
        double narrowing = Math.min(Hung.MOST_NARROWING, way.narrowing().orElse(0));
        // where no strip along was hung, it gives at an easy pull by so much less than across
        double less = test.stretchAlong() > 0 ? test.stretchAcross() / test.stretchAlong() : 1;
        pull = known.along()
                ? Pull.of(narrowing, test.loadAlong(), 1, across)
                : Pull.of(narrowing, across, less, across);
    }

    /**
     * @param along strain along, as worn
     */
    public static AsWorn of(Fabric fabric, double along) {
        return new AsWorn(fabric.test(), along);
    }

    private static double over(OptionalDouble read, double usual) {
        return read.isPresent() ? read.getAsDouble() / usual : 1;
    }

    /** How far it may lie off. */
    public CurveSpread known() {
        return known;
    }

    /** N/m; slack cloth does not push, so nothing below 0. */
    public double tension(double strain) {
        double strip = across.tension(strain);
        if (!(strip > 0)) {
            return 0;
        }
        return worn * (narrowed ? CurveSpread.HOURS_LATER * (strip + pull.added(strain, along)) : strip);
    }

    /** The strain that gives a tension in N/m, 0 for none. */
    public double extension(double tension) {
        if (!narrowed) {
            return across.extension(tension / worn);
        }
        double high = across.extension(tension / worn);
        if (high == 0) {
            return 0;
        }
        // held along it may take less strain than the strip alone, or more once it is worn
        while (tension(high) < tension) {
            high *= 2;
        }
        return Roots.between(x -> tension(x) - tension, 0, high, LoadCurve.LAST_DIGIT)
                .orElseThrow();
    }
}
