package stretchwright.sewing;

import java.util.Map;
import java.util.OptionalDouble;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
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
            case OVERLOCK_3, OVERLOCK_4 -> setting(stitch, 2.1, weight, OptionalDouble.of(1.5), Said.NOTHING);
            case COVERSTITCH -> setting(stitch, 3.0, weight, OptionalDouble.of(1.2), Said.NOTHING);
            case ZIGZAG -> setting(stitch, 2.0, weight, OptionalDouble.empty(), zigzag());
            case CHAINSTITCH -> setting(stitch, 2.5, weight, OptionalDouble.of(1.0), Tell.said("set.note-looper"));
            case LOCKSTITCH -> setting(stitch, 2.5, weight, OptionalDouble.empty(), Tell.said("set.note-needle"));
            case BACKSTITCH_BY_HAND -> setting(stitch, 2.5, weight, OptionalDouble.empty(), Tell.said("set.note-hand"));
        };
    }

    private static Said zigzag() {
        return Tell.said("set.note-zigzag", Part.millimetres(1, 0), Part.millimetres(4, 0));
    }

    private static Setting setting(Stitch stitch, double length, double weight, OptionalDouble feed, Said note) {
        return new Setting(length, needle(stitch, weight), thread(stitch, weight), feed, note, false);
    }

    private static Said needle(Stitch stitch, double weight) {
        String size = weight < LIGHT ? "70/10" : weight <= HEAVY ? "75/11" : "90/14";
        return stitch == Stitch.BACKSTITCH_BY_HAND
                ? Tell.said("set.needle-hand")
                : Tell.said("set.needle", Part.text(size));
    }

    private static Said thread(Stitch stitch, double weight) {
        boolean looper = ThreadUse.positions(stitch).keySet().stream().anyMatch(Threading::isLooper);
        return looper ? Tell.said("set.thread-looper", tex(weight)) : Tell.said("set.thread", tex(weight));
    }

    private static Said tex(double weight) {
        if (weight < LIGHT) {
            return Tell.said("set.tex-light");
        }
        return weight <= HEAVY ? Tell.said("set.tex-middle") : Tell.said("set.tex-heavy");
    }

    /** The needle to buy or to put in, for the whole pair. */
    static Said needle(Fabric fabric) {
        return needle(Stitch.OVERLOCK_4, fabric.quality().weight().orElse(USUAL_WEIGHT));
    }
}
