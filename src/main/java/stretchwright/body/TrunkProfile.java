package stretchwright.body;

/**
 * The girth round the whole body from the waist down to the crotch: the part of {@link GirthProfile} above the legs.
 *
 * <p>In: a body. Out: girth in mm at a height in mm above the floor; above the waist that of the waist. Promise: never
 * outside waist and hip girth, in proportion between them (nothing is measured there; common practice, no source);
 * from the hip down to the crotch the hip girth stands, as two thighs side by side are hardly less (no source).
 */
public record TrunkProfile(double waistHeight, double waist, double hipHeight, double hip) {
    public static TrunkProfile of(Body body) {
        return new TrunkProfile(
                body.mm(Measure.WAIST_HEIGHT),
                body.mm(Measure.WAIST_GIRTH),
                body.mm(Measure.HIP_HEIGHT),
                body.mm(Measure.HIP_GIRTH));
    }

    public double girthAt(double height) {
        return girthBelowWaist(waistHeight - height);
    }

    /** The same by the length below the waist; exact where that is zero. */
    public double girthBelowWaist(double drop) {
        double fall = waistHeight - hipHeight;
        double share = fall > 0 ? Math.max(0, Math.min(1, drop / fall)) : 0;
        return waist + (hip - waist) * share;
    }
}
