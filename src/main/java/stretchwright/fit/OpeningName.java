package stretchwright.fit;

import java.util.Locale;
import stretchwright.ground.Said;

/** What must pass what. */
public enum OpeningName {
    WAISTBAND_OVER_HIPS(Tell.said("opening.band")),
    HEM_OVER_HEEL(Tell.said("opening.hem")),
    LEG_OVER_CALF(Tell.said("opening.leg"));

    private final Said said;

    OpeningName(Said said) {
        this.said = said;
    }

    /** As written in the report: "hem over heel". */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    public Said said() {
        return said;
    }
}
