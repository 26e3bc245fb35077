package stretchwright.fabric;

import java.util.function.DoubleUnaryOperator;
import stretchwright.ground.Chance;
import stretchwright.ground.Roots;

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

    /** Of an ordinary make: strain across, and the spread by tape and sewing on a calf. */
    private static final double USUAL_STRAIN = 0.12;

    private static final double USUAL_BY_TAPE = 0.065;

    private static final double STEP = 1e-4;

    private final DoubleUnaryOperator tension;
    private final DoubleUnaryOperator extension;
    private final CurveSpread cloth;

    private PressureSpread(DoubleUnaryOperator tension, DoubleUnaryOperator extension, CurveSpread cloth) {
        this.tension = tension;
        this.extension = extension;
        this.cloth = cloth;
    }

    /** Of a cloth of which no more than a load curve is known. */
    public PressureSpread(LoadCurve across) {
        this(across::tension, across::extension, CurveSpread.of(across));
    }

    /** With what was read of it besides. */
    public PressureSpread(AsWorn worn) {
        this(worn::tension, worn::extension, worn.known());
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
        double pressure = perTension * tension.applyAsDouble(strain);
        double off = spreads * strainSpread;
        double up = Math.hypot(
                perTension * tension.applyAsDouble(strain + off) - pressure,
                pressure * (StrictMath.exp(spreads * other) - 1));
        double down = Math.hypot(
                pressure - perTension * tension.applyAsDouble(strain - off),
                pressure * (1 - StrictMath.exp(-spreads * other)));
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

    /** Upper end of the range of 8 in 10 over its lower one, of the pressure of an ordinary make in this cloth. */
    static double highOverLow(CurveSpread cloth) {
        double spread = Math.hypot(Math.hypot(cloth.worn(USUAL_STRAIN), BODY), USUAL_BY_TAPE);
        return StrictMath.exp(2 * Chance.EIGHT_IN_TEN * spread);
    }

    /** The tape's part of the pressure's log spread. */
    private double byTape(double strain, double strainSpread) {
        double pull = tension.applyAsDouble(strain);
        if (!(pull > 0)) {
            return MOST_BY_TAPE;
        }
        double slope = (tension.applyAsDouble(strain + STEP) - tension.applyAsDouble(strain - STEP)) / (2 * STEP);
        double plain = slope / pull * strainSpread;
        return plain / Math.hypot(1, plain / MOST_BY_TAPE);
    }

    /**
     * The strain at which a pressure stays so many spreads below a limit, kPa; that of the limit itself where it is under all of them.
     *
     * @param perTension kPa that a tension of 1 N/m of the load curve gives there
     */
    public double strainBelow(double limit, double spreads, double girth, double girthSpread, double perTension) {
        return Roots.between(
                        strain -> perTension
                                        * tension.applyAsDouble(strain)
                                        * StrictMath.exp(spreads * total(strain, strain(strain, girth, girthSpread)))
                                - limit,
                        0,
                        extension.applyAsDouble(limit / perTension),
                        LoadCurve.LAST_DIGIT)
                .orElse(0);
    }
}
