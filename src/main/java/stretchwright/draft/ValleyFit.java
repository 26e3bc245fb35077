package stretchwright.draft;

import java.util.Arrays;

/**
 * The least change of widths after which the leg has one inflection: going down, it narrows less and less to the
 * interval below the knee (the valley), then more and more.
 *
 * <p>Minimises the sum of squared relative changes under linear constraints on neighbouring slopes: a projection onto
 * a convex cone, by Hildreth's dual coordinate ascent (Hildreth, Naval Res. Logist. Q. 4, 1957). The projection is
 * continuous, so that a millimetre on a measure never makes the leg jump.
 */
final class ValleyFit {
    private static final int SWEEPS = 400;

    /** A firm width gives way to its neighbours by this share of what they would give. */
    private static final double FIRM = 0.01;

    private ValleyFit() {}

    /**
     * @param height from the top down, falling
     * @param width wanted
     * @param least the narrowest that each width may become
     * @param firm which widths are not to give way
     * @param valley index of the interval with the least slope
     * @param margin by how much slopes must differ, one value per inner node
     * @param steepest the most that the width may grow per mm of height at the top
     */
    static double[] fit(
            double[] height,
            double[] width,
            double[] least,
            boolean[] firm,
            int valley,
            double[] margin,
            double steepest) {
        int inner = Math.max(0, width.length - 2);
        double[][] row = new double[inner == 0 ? 0 : inner + 1][];
        double[] bound = new double[row.length];
        for (int i = 0; i < inner; i++) {
            double above = height[i] - height[i + 1];
            double below = height[i + 1] - height[i + 2];
            double sign = i + 1 <= valley ? 1 : -1;
            row[i] = new double[] {sign / above, -sign / above - sign / below, sign / below};
            bound[i] = margin[i];
        }
        if (inner > 0) {
            row[inner] = topSlope(height[0] - height[1], height[1] - height[2]);
            bound[inner] = -steepest;
        }
        double[] weight = new double[width.length];
        for (int i = 0; i < width.length; i++) {
            weight[i] = width[i] * width[i] * (firm[i] ? FIRM : 1);
        }
        double[] x = width.clone();
        double[] dual = new double[row.length];
        double[] widening = new double[width.length];
        boolean moves = true;
        for (int sweep = 0; sweep < SWEEPS && moves; sweep++) {
            double[] before = x.clone();
            for (int i = 0; i < row.length; i++) {
                dual[i] += step(x, weight, row[i], i < inner ? i : 0, bound[i], dual[i]);
            }
            for (int i = 0; i < x.length; i++) {
                double change = Math.max(-widening[i], (least[i] - x[i]) / weight[i]);
                widening[i] += change;
                x[i] += change * weight[i];
            }
            moves = !Arrays.equals(before, x);
        }
        return x;
    }

    /** The negative of the slope that {@link ShapeCurve#slopes} gives the upper end. */
    private static double[] topSlope(double first, double second) {
        double onSecond = first / (first + second) / second;
        double onFirst = (1 + first / (first + second)) / first;
        return new double[] {-onFirst, onFirst + onSecond, -onSecond};
    }

    /** One step of the ascent for one constraint on three widths from {@code at} on; how far its dual moved. */
    private static double step(double[] x, double[] weight, double[] row, int at, double bound, double dual) {
        double value = 0;
        double scale = 0;
        for (int k = 0; k < 3; k++) {
            value += row[k] * x[at + k];
            scale += row[k] * row[k] * weight[at + k];
        }
        double change = Math.max(-dual, (bound - value) / scale);
        for (int k = 0; k < 3; k++) {
            x[at + k] += change * row[k] * weight[at + k];
        }
        return change;
    }
}
