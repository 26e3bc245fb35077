package stretchwright.fabric;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import stretchwright.ground.MonotoneCubic;

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

    /** Halvings of an interval of readings: 2^-50 of it is below the last digit. */
    private static final int BISECTIONS = 50;

    private final List<Reading> readings;
    private final boolean assumed;
    private final double[] e;
    private final double[] t;
    private final MonotoneCubic curve;

    private LoadCurve(List<Reading> readings, boolean assumed) {
        this.readings = List.copyOf(readings);
        this.assumed = assumed;
        int n = readings.size() + 1;
        e = new double[n];
        t = new double[n];
        for (int i = 1; i < n; i++) {
            e[i] = readings.get(i - 1).extension();
            t[i] = readings.get(i - 1).tension();
            if (!(e[i] > e[i - 1] && t[i] > t[i - 1])) {
                throw new IllegalArgumentException("load must grow with stretch: " + readings);
            }
        }
        curve = new MonotoneCubic(
                Arrays.stream(e).boxed().toList(), Arrays.stream(t).boxed().toList());
    }

    public static LoadCurve through(List<Reading> readings) {
        return new LoadCurve(readings, false);
    }

    /**
     * The curve where none was read: the one published curve of a soft knit (14.7 N/m at 20 %, straight to 37.6 N/m at
     * 40 %; trade-values section 1.3) taken as that of a cloth of 60 % stretch and scaled in extension to this one's.
     */
    public static LoadCurve assumed(double stretch) {
        double scale = stretch / 0.60;
        List<Reading> scaled = new ArrayList<>();
        scaled.add(new Reading(0.20 * scale, 14.71));
        scaled.add(new Reading(0.40 * scale, 37.59));
        scaled.add(new Reading(0.60 * scale, 75.0));
        return new LoadCurve(scaled, true);
    }

    public boolean isAssumed() {
        return assumed;
    }

    public List<Reading> readings() {
        return readings;
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
        int i = 0;
        while (tension > t[i + 1]) {
            i++;
        }
        double low = e[i];
        double high = e[i + 1];
        for (int round = 0; round < BISECTIONS; round++) {
            double middle = (low + high) / 2;
            if (tension(middle) < tension) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
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
