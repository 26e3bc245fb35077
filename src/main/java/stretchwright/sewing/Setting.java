package stretchwright.sewing;

import java.util.OptionalDouble;
import stretchwright.ground.Said;

/**
 * How a machine is set for a stitch in this cloth: where to begin, or what worked before.
 *
 * @param stitchLength mm
 * @param needle system point and size, such as "stretch needle 75/11"; may be nothing
 * @param thread kind and size; may be nothing
 * @param feed differential feed, 1 is even; empty where the machine has none
 * @param note tensions and whatever else was written down; may be nothing
 * @param kept whether these are the settings that were kept with the fabric
 */
public record Setting(double stitchLength, Said needle, Said thread, OptionalDouble feed, Said note, boolean kept) {

    /** What was kept with a fabric, in the sewer's own words; those that are empty say nothing. */
    public static Setting kept(double stitchLength, String needle, String thread, OptionalDouble feed, String note) {
        return new Setting(stitchLength, Tell.own(needle), Tell.own(thread), feed, Tell.own(note), true);
    }

    /** Stitches per centimetre. */
    public double perCm() {
        return 10 / stitchLength;
    }
}
