package stretchwright.body;

import java.util.List;

/**
 * By what share the skin lengthens from standing to a pose.
 *
 * <p>Kirk and Ibrahim, Textile Research Journal 36, 1966, from memory (trade-values section 3) for sitting and the sit
 * spin; the deep knee bend is that section's tool default derived from them.
 *
 * @param pose as said in the report
 * @param across round the body or limb
 * @param along along the limb
 */
public record SkinExtension(String pose, Region region, double across, double along) {
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

    private static final List<SkinExtension> TABLE = List.of(
            new SkinExtension("standing", Region.SEAT, 0, 0),
            new SkinExtension("standing", Region.KNEE, 0, 0),
            new SkinExtension("sitting", Region.SEAT, 0.175, 0.27),
            new SkinExtension("sitting", Region.KNEE, 0.20, 0.42),
            new SkinExtension("deep knee bend", Region.SEAT, 0.15, 0.30),
            new SkinExtension("deep knee bend", Region.KNEE, 0.20, 0.40),
            new SkinExtension("sit spin", Region.SEAT, 0.19, 0.395),
            new SkinExtension("sit spin", Region.KNEE, 0.285, 0.505));

    public static List<SkinExtension> table() {
        return TABLE;
    }

    /** The most that the skin of a region widens in any pose. */
    public static double mostAcross(Region region) {
        return TABLE.stream()
                .filter(e -> e.region == region)
                .mapToDouble(SkinExtension::across)
                .max()
                .orElseThrow();
    }
}
