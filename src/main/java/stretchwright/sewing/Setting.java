package stretchwright.sewing;

import java.util.OptionalDouble;

/**
 * How a machine is set for a stitch in this cloth: where to begin, or what worked before.
 *
 * @param stitchLength mm
 * @param needle system point and size, such as "stretch needle 75/11"
 * @param thread kind and size
 * @param feed differential feed, 1 is even; empty where the machine has none
 * @param note tensions and whatever else was written down; may be empty
 * @param kept whether these are the settings that were kept with the fabric
 */
public record Setting(
        double stitchLength, String needle, String thread, OptionalDouble feed, String note, boolean kept) {

    /** Stitches per centimetre. */
    public double perCm() {
        return 10 / stitchLength;
    }
}
