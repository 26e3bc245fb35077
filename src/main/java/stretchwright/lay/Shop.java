package stretchwright.lay;

import stretchwright.fabric.Fabric;
import stretchwright.ground.Grid;

/**
 * What the shop is asked for.
 *
 * <p>Needed: the length of the lay, divided by what shrinking leaves of it (the cloth is washed before it is cut),
 * {@value #STRAIGHTENING} mm for straightening at each of the two cut ends, and one repeat of the print so that it
 * can be shifted. Shops sell whole steps: 50 mm where they work metric, an eighth of a yard (114.3 mm) where they
 * do not. The allowances are common practice, no source.
 */
public final class Shop {
    /** For straightening a cut end, mm; common practice, no source. */
    public static final double STRAIGHTENING = 50;
    /** The step in which shops sell by the metre, mm; common practice, no source. */
    public static final double STEP = 50;
    /** An eighth of a yard of 914.4 mm (international agreement of 1959). */
    public static final double EIGHTH_OF_YARD = 914.4 / 8;

    private Shop() {}

    /** What a lay of this length needs before it is washed and straightened, mm. */
    public static double needed(double length, Fabric fabric) {
        double shrinkage = fabric.quality().shrinkageAlong();
        if (!(shrinkage >= 0 && shrinkage < 1)) {
            throw new IllegalArgumentException("shrinkage along of " + shrinkage + " cannot be bought for");
        }
        return length / (1 - shrinkage) + 2 * STRAIGHTENING + fabric.roll().repeatAlong();
    }

    /** The need rounded up to whole steps of the metric shop, mm. */
    public static double metric(double needed) {
        return steps(needed, STEP) * STEP;
    }

    /** The need rounded up to whole eighths of a yard: how many. */
    public static long eighths(double needed) {
        return steps(needed, EIGHTH_OF_YARD);
    }

    /** Rounded up on the 0.01 mm grid, so that a need of exactly one step is one step. */
    private static long steps(double needed, double step) {
        return -Math.floorDiv(-Grid.units(needed), Grid.units(step));
    }
}
