package stretchwright.fabric;

/**
 * How far the pull of a cloth may lie off its load curve: log spreads (one standard deviation of the natural logarithm) by
 * what is known of it. Figures and their sources: docs/maths/fit.md, "Ranges".
 *
 * @param readings how many weights were hung on the strip across
 * @param first extension at the first of them, as a share
 * @param narrowing whether the pressure reckons with a measured narrowing of the strip
 * @param along whether it reckons with a load curve along that was read
 * @param wayBack whether it reckons with the lengths on the way back, under less weight
 * @param relaxed whether it reckons with the length after half an hour under the full weight
 */
public record CurveSpread(
        int readings, double first, boolean narrowing, boolean along, boolean wayBack, boolean relaxed) {
    /** A cloth whose pull may lie no further off than this counts as weighed: only then may a pressure stop a make. */
    public static final double WEIGHED = 0.3;

    /** After some 4 hours cloth pulls so many times as hard as when first stretched, and within these 8 in 10 do (fit.md, "Ranges"). */
    public static final double HOURS_LATER = 0.77;

    public static final double HOURS_LATER_LOW = 0.63;
    public static final double HOURS_LATER_HIGH = 0.89;

    private static final double STRIP = 0.05;
    private static final double READING = 0.04;
    private static final double NARROWING = 0.12;
    private static final double SLIDE = 0.05;
    private static final double WORN = 0.10;
    /** The half hour's share of the worn state: what is left of it once the way back is known; the rest is the way back's. */
    private static final double RELAXATION = 0.07;

    /** Of the bend of a load curve, {@link LoadCurve#BEND}: where one reading tells nothing of it, and where two do. */
    private static final double BEND = 0.5;

    private static final double BEND_BY_SEVERAL = 0.27;

    /** A curve cannot be told better than this by readings beside the strain. */
    private static final double NEAR = 0.10;

    private static final double LEAST_STRAIN = 0.02;
    private static final double MOST_STRAIN = 0.45;

    /** As far as the curve itself tells. */
    public static CurveSpread of(LoadCurve across) {
        return across.isAssumed()
                ? new CurveSpread(0, 0, false, false, false, false)
                : new CurveSpread(
                        across.readings().size(), across.readings().get(0).extension(), false, false, false, false);
    }

    /** With what was read of the strips besides, as far as {@link AsWorn} reckons with it. */
    public static CurveSpread of(Fabric.Test test) {
        CurveSpread curve = of(test.loadAcross());
        Hung.Way way = test.hung().across();
        return of(
                curve.readings,
                curve.first,
                way.narrowing().isPresent(),
                !test.loadAlong().isAssumed(),
                way.wayBack().isPresent(),
                way.relaxed().isPresent());
    }

    /** A strip along tells on the pull across only through the narrowing, and beside a strip that was weighed across. */
    static CurveSpread of(
            int readings, double first, boolean width, boolean stripAlong, boolean back, boolean halfAnHour) {
        return new CurveSpread(readings, first, width, width && stripAlong && readings > 0, back, halfAnHour);
    }

    /** Of the tension at a strain: smooth in it. */
    public double tension(double strain) {
        double e = Math.max(LEAST_STRAIN, Math.min(MOST_STRAIN, strain));
        double near = 0.10 * StrictMath.pow(e / 0.20, -0.463);
        return switch (readings) {
            case 0 -> 0.695 - 0.33 * e;
            case 1 -> Math.hypot(near, BEND * bend(e / first));
            case 2 -> Math.max(0.2605 * StrictMath.exp(-4.3 * e), beyond(e));
            default -> Math.max(near, beyond(e));
        };
    }

    /** Of several readings that all lie beyond the strain. */
    private double beyond(double e) {
        return Math.hypot(NEAR, BEND_BY_SEVERAL * bend(e / first));
    }

    /**
     * How much the logarithm of the tension below a reading changes with the bend: of ln((e^(k x) - 1) / (e^k - 1)) by k;
     * nothing at the reading and beyond.
     */
    private static double bend(double share) {
        double x = Math.min(1, share);
        double k = LoadCurve.BEND;
        return share(k, 1) - share(k, x);
    }

    /** x / (1 - e^(-k x)): of ln(e^(k x) - 1) by k. */
    private static double share(double k, double x) {
        return x / (1 - StrictMath.exp(-k * x));
    }

    /** Of the pressure, as far as the cloth goes: tension, strip, reading, narrowing, slide and how it is when worn. */
    public double worn(double strain) {
        double square = square(tension(strain)) + square(STRIP) + square(READING);
        square += narrowing ? 0 : square(NARROWING);
        square += along ? 0 : square(SLIDE);
        square += wayBack ? 0 : square(WORN) - square(RELAXATION);
        return Math.sqrt(square + (relaxed ? 0 : square(RELAXATION)));
    }

    private static double square(double x) {
        return x * x;
    }
}
