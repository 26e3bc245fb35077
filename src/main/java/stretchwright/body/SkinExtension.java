package stretchwright.body;

import java.util.List;
import java.util.OptionalDouble;

/**
 * By what share the skin lengthens from standing to a pose.
 *
 * <p>Kirk and Ibrahim, Textile Research Journal 36, 1966, from memory (trade-values section 3) for sitting and the sit
 * spin; the deep knee bend is that section's tool default derived from them. Lunge and high leg have no published figure
 * that we know of: along they are reckoned by {@link Hinge}, across they are left out.
 *
 * @param pose as said in the report
 * @param across round the body or limb; empty where nothing is known
 * @param along along the limb; empty where nothing is known
 */
public record SkinExtension(String pose, Region region, OptionalDouble across, OptionalDouble along, Basis basis) {
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

    private static final List<SkinExtension> TABLE = List.of(
            published("standing", Region.SEAT, 0, 0),
            published("standing", Region.KNEE, 0, 0),
            published("sitting", Region.SEAT, 0.175, 0.27),
            published("sitting", Region.KNEE, 0.20, 0.42),
            published("deep knee bend", Region.SEAT, 0.15, 0.30),
            published("deep knee bend", Region.KNEE, 0.20, 0.40),
            published("sit spin", Region.SEAT, 0.19, 0.395),
            published("sit spin", Region.KNEE, 0.285, 0.505),
            hinged("lunge", Region.SEAT, Hinge.share(LUNGE, Hinge.SEAT_SPREAD)),
            hinged("lunge", Region.KNEE, Hinge.share(LUNGE, BentKnee.FRONT)),
            hinged("high leg", Region.SEAT, Hinge.share(HIGH_LEG, Hinge.SEAT_SPREAD)));

    private static SkinExtension published(String pose, Region region, double across, double along) {
        return new SkinExtension(pose, region, OptionalDouble.of(across), OptionalDouble.of(along), Basis.PUBLISHED);
    }

    private static SkinExtension hinged(String pose, Region region, double along) {
        return new SkinExtension(pose, region, OptionalDouble.empty(), OptionalDouble.of(along), Basis.DERIVED);
    }

    public static List<SkinExtension> table() {
        return TABLE;
    }

    /** The most that the skin of a region widens in any pose with a published figure. */
    public static double mostAcross(Region region) {
        return TABLE.stream()
                .filter(e -> e.region == region && e.basis == Basis.PUBLISHED)
                .flatMapToDouble(e -> e.across.stream())
                .max()
                .orElseThrow();
    }
}
