package stretchwright.fabric;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import stretchwright.ground.MonotoneCubic;
import stretchwright.ground.Roots;

/**
 * Tension against extension in one direction: T(e) in N per metre of relaxed width, e as a share.
 *
 * <p>A {@link MonotoneCubic} from (0, 0) through the readings,
 * straight beyond the last one; {@link #covers} says whether a value lies inside what was read.
 */
public final class LoadCurve {
    /** A reading of the hanging test. */
    public record Reading(double extension, double tension) {}

    /** How sharply a knit stiffens from 0 to its stretch: k of (e^(k x) - 1) / (e^k - 1); straight is 0 (docs/maths/fit.md, "Ranges"). */
    public static final double BEND = 1.15;

    /** Width of the test strip, m: 1 N on 50 mm is 20 N/m. */
    public static final double STRIP_WIDTH = 0.050;

    /** N/m at its stretch, of a cloth of the usual weight, g/m2: assumed. */
    private static final double PULL = 150;

    private static final double USUAL_WEIGHT = 250;

    /** Where a bent curve is drawn through, and where an assumed one is told. */
    private static final List<Double> BENT = List.of(0.04, 0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1.0);

    private static final List<Double> TOLD = List.of(1.0 / 3, 2.0 / 3, 1.0);

    /** An extension is found to this. */
    static final double LAST_DIGIT = 1e-14;

    private final List<Reading> readings;
    private final boolean assumed;
    private final double[] e;
    private final double[] t;
    private final MonotoneCubic curve;

    private LoadCurve(List<Reading> readings, List<Reading> knots, boolean assumed) {
        this.readings = List.copyOf(readings);
        this.assumed = assumed;
        int n = knots.size() + 1;
        e = new double[n];
        t = new double[n];
        for (int i = 1; i < n; i++) {
            e[i] = knots.get(i - 1).extension();
            t[i] = knots.get(i - 1).tension();
            if (!(e[i] > e[i - 1] && t[i] > t[i - 1])) {
                throw new IllegalArgumentException("load must grow with stretch: " + readings);
            }
        }
        curve = new MonotoneCubic(
                Arrays.stream(e).boxed().toList(), Arrays.stream(t).boxed().toList());
    }

    /** One reading tells how hard the cloth pulls and nothing of the bend below it: that is the usual one. */
    public static LoadCurve through(List<Reading> readings) {
        List<Reading> knots = readings;
        if (readings.size() == 1) {
            knots = bent(readings.get(0), BENT);
        }
        return new LoadCurve(readings, knots, false);
    }

    /** Of a cloth of unknown weight. */
    public static LoadCurve assumed(double stretch) {
        return assumed(stretch, OptionalDouble.empty());
    }

    /**
     * The curve where none was read: T = F (e^(k e / S) - 1) / (e^k - 1), S the stretch at an easy pull, F 150 N/m for a cloth of 250
     * g/m2 and in proportion to its weight; by a spread of 0.6 in ln F (docs/maths/fit.md, "Ranges").
     *
     * @param weight g/m2
     */
    public static LoadCurve assumed(double stretch, OptionalDouble weight) {
        Reading end = new Reading(stretch, PULL * weight.orElse(USUAL_WEIGHT) / USUAL_WEIGHT);
        return new LoadCurve(bent(end, TOLD), bent(end, BENT), true);
    }

    /** Points of the bent curve that ends there, at shares of its extension. */
    private static List<Reading> bent(Reading end, List<Double> shares) {
        return shares.stream()
                .map(x -> new Reading(
                        x * end.extension(), end.tension() * StrictMath.expm1(BEND * x) / StrictMath.expm1(BEND)))
                .toList();
    }

    /** The same cloth pulling so many times as hard at every stretch. */
    public LoadCurve times(double factor) {
        if (factor == 1) {
            return this;
        }
        return new LoadCurve(times(readings, factor), times(knots(), factor), assumed);
    }

    private static List<Reading> times(List<Reading> all, double factor) {
        return all.stream()
                .map(r -> new Reading(r.extension(), factor * r.tension()))
                .toList();
    }

    public boolean isAssumed() {
        return assumed;
    }

    public List<Reading> readings() {
        return readings;
    }

    /** The points that it is drawn through, which are more than were read where it is bent as knits are. */
    public List<Reading> knots() {
        return IntStream.range(1, e.length)
                .mapToObj(i -> new Reading(e[i], t[i]))
                .toList();
    }

    /** Whether the extension lies inside what was read (or assumed). */
    public boolean covers(double extension) {
        return extension >= 0 && extension <= e[e.length - 1];
    }

    /** Tension in N/m; slack cloth does not push, so nothing below 0. */
    public double tension(double extension) {
        if (!(extension > 0)) {
            return 0;
        }
        return curve.value(extension);
    }

    /** Extension of the last reading (or of the end of the assumed curve): beyond it nothing is known. */
    public double lastExtension() {
        return e[e.length - 1];
    }

    /** The extension that gives a tension in N/m, 0 for none; beyond the last reading straight on, as the tension is. */
    public double extension(double tension) {
        if (!(tension > 0)) {
            return 0;
        }
        int last = e.length - 1;
        if (tension >= t[last]) {
            return e[last] + (tension - t[last]) / curve.slope(e[last]);
        }
        return Roots.between(x -> tension(x) - tension, 0, e[last], LAST_DIGIT).orElseThrow();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof LoadCurve c && readings.equals(c.readings) && assumed == c.assumed;
    }

    @Override
    public int hashCode() {
        return readings.hashCode();
    }
}
