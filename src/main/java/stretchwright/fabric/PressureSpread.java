package stretchwright.fabric;

import stretchwright.ground.Chance;

/**
 * How far strain and pressure may lie off what is told: by tape and scissors, by what is known of the cloth, and by the body
 * under it. Figures and sources: docs/maths/fit.md, "Ranges".
 */
public final class PressureSpread {
    /** Off what was drawn a ring comes out by so much, mm: cut, sewn (common practice, no source). */
    private static final double SEWN = 2;

    /** The pressure on a leg against that of a cylinder as stiff as the tape: 4.1 mmHg on 20 to 25 (J Vasc Surg 44, 2006). */
    private static final double BODY = 0.20;

    /** Near slack the tape's part of the spread grows without end: it goes no further than this. */
    private static final double MOST_BY_TAPE = 1.5;

    private static final double STEP = 1e-4;
    private static final int BISECTIONS = 50;

    private final LoadCurve curve;
    private final CurveSpread cloth;

    public PressureSpread(LoadCurve across) {
        this(across, CurveSpread.of(across));
    }

    public PressureSpread(LoadCurve across, CurveSpread cloth) {
        this.curve = across;
        this.cloth = cloth;
    }

    /** One standard deviation of a strain: tape round the girth, cut and sewing of the width. */
    public static double strain(double strain, double girth, double girthSpread) {
        return (1 + strain) * Math.hypot(girthSpread / girth, SEWN * (1 + strain) / girth);
    }

    /**
     * @param strainSpread one standard deviation of the strain
     * @param perTension kPa that a tension of 1 N/m of the load curve gives there
     */
    public Likely of(double strain, double strainSpread, double perTension) {
        return within(Chance.EIGHT_IN_TEN, strain, strainSpread, perTension);
    }

    /** @param spreads so far to either side of the middle; near slack, where the middle is 0, the strain's own ends decide */
    public Likely within(double spreads, double strain, double strainSpread, double perTension) {
        double other = Math.hypot(cloth.worn(strain), BODY);
        double pressure = perTension * curve.tension(strain);
        double off = spreads * strainSpread;
        double up = Math.hypot(
                perTension * curve.tension(strain + off) - pressure, pressure * (StrictMath.exp(spreads * other) - 1));
        double down = Math.hypot(
                pressure - perTension * curve.tension(strain - off), pressure * (1 - StrictMath.exp(-spreads * other)));
        return new Likely(
                strain - off,
                strain + off,
                Math.max(0, pressure - down),
                pressure + up,
                total(strain, strainSpread),
                cloth.tension(strain));
    }

    /** Of the pressure's logarithm, one standard deviation. */
    public double total(double strain, double strainSpread) {
        return Math.hypot(Math.hypot(cloth.worn(strain), BODY), byTape(strain, strainSpread));
    }

    /** The tape's part of the pressure's log spread. */
    private double byTape(double strain, double strainSpread) {
        double tension = curve.tension(strain);
        if (!(tension > 0)) {
            return MOST_BY_TAPE;
        }
        double slope = (curve.tension(strain + STEP) - curve.tension(strain - STEP)) / (2 * STEP);
        double plain = slope / tension * strainSpread;
        return plain / Math.hypot(1, plain / MOST_BY_TAPE);
    }

    /**
     * The strain at which a pressure stays so many spreads below a limit, kPa; that of the limit itself where it is under all of them.
     *
     * @param perTension kPa that a tension of 1 N/m of the load curve gives there
     */
    public double strainBelow(double limit, double spreads, double girth, double girthSpread, double perTension) {
        double low = 0;
        double high = curve.extension(limit / perTension);
        for (int round = 0; round < BISECTIONS; round++) {
            double middle = (low + high) / 2;
            double spread = total(middle, strain(middle, girth, girthSpread));
            if (perTension * curve.tension(middle) * StrictMath.exp(spreads * spread) < limit) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
