package stretchwright.intake;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Something that a worn garment does, in plain words: as it is typed and written to the make file. Some have two opposite
 * cures, which a question tells apart. What makers change then stands in the room wearing.
 */
public enum WearingSymptom {
    BAND_SLIDES_DOWN("band slides down"),
    BAND_ROLLS_OVER("band rolls over"),
    GAPE_AT_BACK_WAIST("gape at back waist"),
    FOLDS_BELOW_BACK_BAND("folds below the back band", true),
    BAND_DROPS_SITTING("band drops at the back when sitting"),
    WAIST_TOO_HIGH("waist too high"),
    WAIST_TOO_LOW("waist too low"),
    WAIST_TOO_TIGHT("waist too tight"),
    WAISTBAND_SEAM_SNAPS("waistband seam snaps"),
    BAND_WILL_NOT_PASS("band will not pass the hips"),
    CROTCH_HANGS_LOW("crotch hangs low", true),
    FOLD_UNDER_FRONT_BAND("fold under the front band"),
    CREASE_INTO_FRONT("crease into the front centre"),
    BACK_SEAM_CUTS_IN("back seam cuts in"),
    SAG_BELOW_SEAT("sag below the seat"),
    DRAG_LINES("drag lines from crotch to hip"),
    PRESSURE_IN_FRONT("pressure or sag in front"),
    CROTCH_SEAM_BURSTS("crotch seam bursts"),
    NO_RANGE_IN_SPLITS("no range in splits"),
    TIGHT_CALF("too tight at the calf"),
    BAGGY_KNEES("baggy knees"),
    FOLDS_BEHIND_KNEE("folds behind the knee"),
    HEM_CREEPS_UP("hem creeps up"),
    LEGS_TOO_SHORT("legs too short"),
    LEGS_TOO_LONG("legs too long"),
    LEG_TWISTS("leg twists"),
    SEE_THROUGH("see-through when bent"),
    HEM_WILL_NOT_PASS("hem will not pass heel or boot"),
    HEM_RIDES_UP("hem rides up over the boot"),
    LOOSE_LEG("loose leg caught by the blade"),
    LACES("laces come loose or catch"),
    HEM_WAVY("hem wavy");

    private final String word;
    private final boolean asks;

    WearingSymptom(String word) {
        this(word, false);
    }

    WearingSymptom(String word, boolean asks) {
        this.word = word;
        this.asks = asks;
    }

    /** As typed and as written. */
    public String word() {
        return word;
    }

    /** Whether a question comes first. */
    public boolean asks() {
        return asks;
    }

    /** As they are typed. */
    public static List<String> names() {
        return Arrays.stream(values()).map(WearingSymptom::word).toList();
    }

    public static Optional<WearingSymptom> of(String name) {
        String plain = name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        return Arrays.stream(values()).filter(s -> s.word.equals(plain)).findFirst();
    }
}
