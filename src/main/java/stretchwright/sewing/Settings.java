package stretchwright.sewing;

import java.util.Map;
import java.util.OptionalDouble;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.Stitch;

/**
 * Where to begin with a machine in this cloth. Stitch lengths for swimwear knits, 12 to 16 stitches per inch (1.6 to 2.1
 * mm), and needle and thread by the weight of the cloth: trade-values section 4.3; the rest common practice, no source.
 */
final class Settings {
    /** Taken where the weight was not given, g/m2: the middle of what leggings are made from (trade-values section 1.3). */
    private static final double USUAL_WEIGHT = 250;

    private static final double LIGHT = 180;
    private static final double HEAVY = 280;

    private Settings() {}

    /** What was kept with the fabric, else where to begin. */
    static Setting of(Stitch stitch, Fabric fabric, Map<Stitch, Setting> kept) {
        Setting known = kept.get(stitch);
        return known == null ? usual(stitch, fabric.quality().weight().orElse(USUAL_WEIGHT)) : known;
    }

    private static Setting usual(Stitch stitch, double weight) {
        return switch (stitch) {
            case OVERLOCK_3, OVERLOCK_4 -> setting(stitch, 2.1, weight, OptionalDouble.of(1.5), "");
            case COVERSTITCH -> setting(stitch, 3.0, weight, OptionalDouble.of(1.2), "");
            case ZIGZAG -> setting(stitch, 2.0, weight, OptionalDouble.empty(), "1 mm wide for seams, 4 mm for hems");
            case CHAINSTITCH -> setting(stitch, 2.5, weight, OptionalDouble.of(1.0), "a loose looper thread");
            case LOCKSTITCH -> setting(stitch, 2.5, weight, OptionalDouble.empty(), "a loose needle thread");
            case BACKSTITCH_BY_HAND -> setting(stitch, 2.5, weight, OptionalDouble.empty(), "a loose thread");
        };
    }

    private static Setting setting(Stitch stitch, double length, double weight, OptionalDouble feed, String note) {
        return new Setting(length, needle(stitch, weight), thread(stitch, weight), feed, note, false);
    }

    private static String needle(Stitch stitch, double weight) {
        if (stitch == Stitch.BACKSTITCH_BY_HAND) {
            return "a fine ball point needle for hand";
        }
        return "stretch needle " + (weight < LIGHT ? "70/10" : weight <= HEAVY ? "75/11" : "90/14");
    }

    private static String thread(Stitch stitch, double weight) {
        String tex = weight < LIGHT ? "Tex 18 to 24" : weight <= HEAVY ? "Tex 24 to 27" : "Tex 40";
        boolean looper = !ThreadUse.positions(stitch).keySet().stream()
                .allMatch(p -> p.endsWith("needle") || p.equals("bobbin"));
        return "polyester, " + tex + (looper ? "; textured polyester in the loopers" : "");
    }

    /** The needle to buy or to put in, for the whole pair. */
    static String needle(Fabric fabric) {
        return needle(Stitch.OVERLOCK_4, fabric.quality().weight().orElse(USUAL_WEIGHT));
    }
}
