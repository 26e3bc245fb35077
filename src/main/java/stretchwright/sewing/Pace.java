package stretchwright.sewing;

import stretchwright.pattern.Stitch;

/**
 * How long a step takes a practised sewer. Common practice, no source; laid out so that pinned
 * overlock seams come to 0.5 to 1 min and cover rows to 1 to 1.5 min per 100 mm over the whole garment (trade-values
 * section 11). The table stands in docs/maths/sewing.md.
 */
final class Pace {
    /** Clips or pins every 100 mm. */
    static final double PIN_SPACING = 100;

    /** Minutes to place a pin and take it out again. */
    static final double PIN = 0.12;

    /** Minutes per seam to take up two flat edges, lay them together, cut the thread ends. */
    static final double TAKE_UP_FLAT = 1.0;

    /** Minutes per seam on a ring, which has to be turned under the foot and stretched to its marks. */
    static final double TAKE_UP_RING = 1.5;

    /** Minutes to take an overlock knife out of work and put it back. */
    static final double KNIFE = 1.0;

    static final double TEST = 3.0;
    static final double FOLD_AND_MARK = 1.5;
    static final double MARK = 1.0;
    static final double EYELETS = 6.0;
    static final double CORD = 2.0;
    static final double PRESS = 4.0;
    static final double TRY_ON = 4.0;

    private Pace() {}

    /** Minutes under the needle per metre, stops included. */
    static double perMetre(Stitch stitch) {
        return switch (stitch) {
            case OVERLOCK_3, OVERLOCK_4 -> 2.5;
            case COVERSTITCH -> 7.0;
            case ZIGZAG, CHAINSTITCH, LOCKSTITCH -> 5.0;
            case BACKSTITCH_BY_HAND -> 30.0;
        };
    }

    static Work flatSeam(Stitch stitch, double length, int times) {
        return new Work(times * TAKE_UP_FLAT, pins(length, times), underTheNeedle(stitch, length));
    }

    static Work ringSeam(Stitch stitch, double length, int times) {
        return new Work(times * TAKE_UP_RING, pins(length, times), underTheNeedle(stitch, length));
    }

    /** A row on top of a finished seam needs no pins. */
    static Work row(Stitch stitch, double length, int times) {
        return new Work(times * TAKE_UP_FLAT, 0, underTheNeedle(stitch, length));
    }

    private static double pins(double length, int times) {
        return times * Math.ceil(length / times / PIN_SPACING) * PIN;
    }

    private static double underTheNeedle(Stitch stitch, double length) {
        return length / 1000 * perMetre(stitch);
    }
}
