package stretchwright.pattern;

import java.util.OptionalDouble;

/**
 * How the leggings end above.
 *
 * @param dropBelowWaist how far below the waist the legs' top edge (where the band is joined) sits, mm
 * @param frontRaise how much higher than usual the top edge stands at centre front, mm; negative: lower
 * @param backRaise the same at centre back
 * @param band the waistband
 * @param back how the surplus of the hip over the waist is taken in at the back
 */
public record TopEnd(double dropBelowWaist, double frontRaise, double backRaise, Band band, BackShape back) {
    /**
     * @param height finished height, mm
     * @param elastic width of an elastic inside, mm; needed for a casing
     * @param drawstring a cord through the band; never for a child
     * @param keyPocket width of a key pocket inside the band, mm
     */
    public record Band(
            Shape shape, double height, OptionalDouble elastic, boolean drawstring, OptionalDouble keyPocket) {
        public enum Shape {
            /** A folded rectangle. */
            STRAIGHT,
            /** Two layers of the developed frustum between the waist and its lower edge. */
            CONTOURED,
            /** The legs' own top turned down over an elastic. */
            CASING
        }

        public static Band straight(double height) {
            return new Band(Shape.STRAIGHT, height, OptionalDouble.empty(), false, OptionalDouble.empty());
        }
    }

    public enum BackShape {
        /** What the slanted centre seams leave, the band takes in. */
        PLAIN,
        /** One dart in each half of the back. */
        DARTS,
        /** The centre back seam takes in more and curves. */
        SHAPED_SEAM
    }

    /** At the waist, under a straight folded band. */
    public static TopEnd band(double height) {
        return new TopEnd(0, 0, 0, Band.straight(height), BackShape.PLAIN);
    }

    /** The same, its top edge so far below the waist. */
    public TopEnd dropped(double mm) {
        return new TopEnd(mm, frontRaise, backRaise, band, back);
    }
}
