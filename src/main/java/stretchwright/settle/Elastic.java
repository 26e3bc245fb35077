package stretchwright.settle;

import stretchwright.pattern.NotionName;
import stretchwright.pattern.Pattern;

/** What an elastic in the waistband pulls. */
public final class Elastic {
    /** N for each mm of its width, stretched to twice its length (from memory, no source). */
    private static final double PULL = 1;

    /** Of the logarithm of that: elastics of one width pull otherwise by a half (no source). */
    public static final double SPREAD = 0.35;

    private static final double METRE = 1000;

    private Elastic() {}

    /**
     * N.
     *
     * @param width of the elastic, mm
     * @param ring its length all round as sewn, mm
     * @param worn what it is stretched to, mm
     */
    public static double pull(double width, double ring, double worn) {
        return PULL * width * Math.max(0, worn / ring - 1);
    }

    /**
     * N/m, spread over the band that it lies in.
     *
     * @param pull N
     * @param height of the band, mm
     */
    public static double tension(double pull, double height) {
        return pull / (height / METRE);
    }

    /** N, of those that lie in a pattern's band. */
    public static double pull(Pattern pattern) {
        return pattern.notions().stream()
                .filter(n -> n.name() == NotionName.WAIST_ELASTIC)
                .mapToDouble(n -> pull(n.width(), n.cut() - n.ends(), n.worn()))
                .sum();
    }
}
