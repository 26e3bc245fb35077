package stretchwright.body;

import java.util.List;

/**
 * By what share the skin lengthens from standing to a pose.
 *
 * <p>Kirk and Ibrahim, Textile Research Journal 36, 1966, from memory (trade-values section 3) for sitting and the sit
 * spin; the deep knee bend is that section's tool default derived from them. Lunge and high leg have no published figure
 * that we know of. Along they are reckoned by {@link Hinge}; across they stand at what was published for the same bend of
 * the joint: a lunge's right angles are those of sitting, a raised leg's hip is bent no further than in the sit spin.
 *
 * @param pose as said in the report
 * @param across round the body or limb
 * @param along along the limb
 */
public record SkinExtension(String pose, Region region, double across, double along, Basis basis) {
    public enum Region {
        SEAT("seat"),
        KNEE("knee");

        private final String word;

        Region(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** Where a figure comes from. */
    public enum Basis {
        PUBLISHED,
        /** Derived here, no published figure: never more than a caution. */
        DERIVED
    }

    /** Front knee and front hip of a lunge stand at about a right angle. */
    private static final double LUNGE = 90;

    /** A hip bends no further, whichever leg is raised: 120 degrees (normal range of motion, from memory). */
    private static final double HIGH_LEG = 120;

    private static final double SITTING_SEAT = 0.175;
    private static final double SITTING_KNEE = 0.20;
    private static final double SIT_SPIN_SEAT = 0.19;

    private static final List<SkinExtension> TABLE = List.of(
            published("standing", Region.SEAT, 0, 0),
            published("standing", Region.KNEE, 0, 0),
            published("sitting", Region.SEAT, SITTING_SEAT, 0.27),
            published("sitting", Region.KNEE, SITTING_KNEE, 0.42),
            published("deep knee bend", Region.SEAT, 0.15, 0.30),
            published("deep knee bend", Region.KNEE, 0.20, 0.40),
            published("sit spin", Region.SEAT, SIT_SPIN_SEAT, 0.395),
            published("sit spin", Region.KNEE, 0.285, 0.505),
            derived("lunge", Region.SEAT, SITTING_SEAT, Hinge.share(LUNGE, Hinge.SEAT_SPREAD)),
            derived("lunge", Region.KNEE, SITTING_KNEE, Hinge.share(LUNGE, BentKnee.FRONT)),
            derived("high leg", Region.SEAT, SIT_SPIN_SEAT, Hinge.share(HIGH_LEG, Hinge.SEAT_SPREAD)));

    private static SkinExtension published(String pose, Region region, double across, double along) {
        return new SkinExtension(pose, region, across, along, Basis.PUBLISHED);
    }

    private static SkinExtension derived(String pose, Region region, double across, double along) {
        return new SkinExtension(pose, region, across, along, Basis.DERIVED);
    }

    public static List<SkinExtension> table() {
        return TABLE;
    }

    /** The most that the skin of a region widens in any pose with a published figure. */
    public static double mostAcross(Region region) {
        return TABLE.stream()
                .filter(e -> e.region == region && e.basis == Basis.PUBLISHED)
                .mapToDouble(SkinExtension::across)
                .max()
                .orElseThrow();
    }
}
