package stretchwright.body;

/**
 * A joint as a hinge: bent by an angle, its outer side lengthens by radius times angle, with radius = girth / (2 pi).
 *
 * <p>Derived here, no published figure; a round limb that keeps its shape, so an upper bound. Beside it stands what was
 * published for a right angle (sitting, Kirk and Ibrahim 1966, from memory): at the knee 41 to 43 %, where the hinge gives
 * 46 %; over the seat 27 %, from which the length over which the seat's extra spreads is taken.
 */
public final class Hinge {
    /** Over the seat the extra spreads over this share of the thigh girth (528 mm on 570): 90/360 of it then are 27 %. */
    static final double SEAT_SPREAD = 90.0 / 360 / 0.27;

    private Hinge() {}

    /** mm more over the outer side of a joint of this girth, bent by so many degrees. */
    public static double extra(double girth, double degrees) {
        return girth / (2 * Math.PI) * Math.toRadians(degrees);
    }

    /** The same as a share of the length it spreads over, itself given as a share of the girth. */
    static double share(double degrees, double spreadOverGirth) {
        return extra(1, degrees) / spreadOverGirth;
    }
}
