package stretchwright.lay.nest;

import java.util.Arrays;

/**
 * How long the sections of one outline are along a sweep, and what share of a line they take: the pieces of which the
 * floor under a lay is made (docs/maths/lay.md).
 *
 * <p>Between neighbouring corners the section's length runs straight, from first to last over span.
 */
public final class Sections {
    /**
     * Sections must be longer than a threshold by this much (units of 0.01 mm) to count as longer: far above the
     * rounding of the sums, so that a section of exactly a third never counts as more than a third.
     */
    private static final double CLEARLY = 1e-3;

    private final double[] span;
    private final double[] first;
    private final double[] last;

    private Sections(int n) {
        span = new double[n];
        first = new double[n];
        last = new double[n];
    }

    /** Of the slabs of a sweep through these corner positions. */
    public static Sections of(Slabs slabs, long[] corners) {
        long[] cuts = Arrays.stream(corners).sorted().distinct().toArray();
        Sections out = new Sections(cuts.length - 1);
        for (int k = 0; k + 1 < cuts.length; k++) {
            double span = cuts[k + 1] - cuts[k];
            double near = slabs.section(cuts[k] + span / 4);
            double far = slabs.section(cuts[k] + 3 * span / 4);
            out.span[k] = span;
            out.first[k] = near - (far - near) / 2;
            out.last[k] = far + (far - near) / 2;
        }
        return out;
    }

    /** The integral of the sections whose length lies between two bounds. */
    private double between(double least, double most) {
        double sum = 0;
        for (int k = 0; k < span.length; k++) {
            double low = Math.min(first[k], last[k]);
            double high = Math.max(first[k], last[k]);
            double from = Math.max(low, least);
            double to = Math.min(high, most);
            if (from <= to) {
                sum += high - low < CLEARLY ? span[k] * from : span[k] * (to - from) / (high - low) * (from + to) / 2;
            }
        }
        return sum;
    }

    /** How much of the sweep has sections longer than a length. */
    private double longerThan(double length) {
        double sum = 0;
        for (int k = 0; k < span.length; k++) {
            double low = Math.min(first[k], last[k]);
            double high = Math.max(first[k], last[k]);
            if (low > length) {
                sum += span[k];
            } else if (high > length) {
                sum += span[k] * (high - length) / (high - low);
            }
        }
        return sum;
    }

    /**
     * Sweep length these sections take for themselves on a line of the given length, if sections shorter than least
     * count nothing and those longer than line - least count as the whole line; least is at most half the line.
     */
    public double takenLeavingOut(double least, double line) {
        double whole = line - least + CLEARLY;
        return between(least == 0 ? 0 : least + CLEARLY, whole) / line + longerThan(whole);
    }

    /** The same if each section counts the number of k+1-ths of the line it is longer than, out of k. */
    public double takenInSteps(int k, double line) {
        double sum = 0;
        for (int m = 1; m <= k; m++) {
            sum += longerThan(m * line / (k + 1) + CLEARLY) / k;
        }
        return sum;
    }
}
