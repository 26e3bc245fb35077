package stretchwright.fabric;

/**
 * How hard several layers of one cloth hold where they lie over each other on the body: less than the sum of each, as they
 * slide on one another and the outer one rides on the inner.
 *
 * <p>Two stockings over one pressed 1.65 and 1.70 times as much as one (Ann Vasc Dis 5:435, 2012; abstract), two tubular
 * bandages 1.29 times (Ann Vasc Dis 13:410, 2020; abstract). On two rods, where nothing slides, it is 2.
 */
public final class Layers {
    /** Of two layers, in pulls of one; 8 of 10 lie between 1.5 and 1.9 (docs/maths/fit.md). */
    public static final double TWO = 1.7;

    private Layers() {}
}
