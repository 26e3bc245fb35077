package stretchwright.pattern;

import java.util.Locale;
import stretchwright.ground.Said;

/** What notches mark. */
public enum NotchName {
    BELOW_WAIST(Tell.said("notch.below-waist")),
    ABOVE_HIP(Tell.said("notch.above-hip")),
    HIP(Tell.said("notch.hip")),
    BELOW_HIP(Tell.said("notch.below-hip")),
    ABOVE_CROTCH(Tell.said("notch.above-crotch")),
    CROTCH(Tell.said("notch.crotch")),
    BELOW_CROTCH(Tell.said("notch.below-crotch")),
    ABOVE_MID_THIGH(Tell.said("notch.above-mid-thigh")),
    MID_THIGH(Tell.said("notch.mid-thigh")),
    BELOW_MID_THIGH(Tell.said("notch.below-mid-thigh")),
    KNEE(Tell.said("notch.knee")),
    ABOVE_CALF(Tell.said("notch.above-calf")),
    CALF(Tell.said("notch.calf")),
    BELOW_CALF(Tell.said("notch.below-calf")),
    ANKLE(Tell.said("notch.ankle")),
    BELOW_ANKLE(Tell.said("notch.below-ankle")),
    BOOT_TOP(Tell.said("notch.boot-top")),
    BELOW_BOOT_TOP(Tell.said("notch.below-boot-top")),
    ABOVE_KNEE(Tell.said("notch.above-knee")),
    BELOW_KNEE(Tell.said("notch.below-knee")),
    SIDE(Tell.said("notch.side")),
    CENTRE(Tell.said("notch.centre")),
    CENTRE_FRONT(Tell.said("notch.centre-front")),
    FRONT_RISE(Tell.said("notch.front-rise")),
    BACK_RISE(Tell.said("notch.back-rise")),
    INSTEP(Tell.said("notch.instep")),
    HEEL(Tell.said("notch.heel")),
    FRONT(Tell.said("notch.front")),
    BACK(Tell.said("notch.back")),
    DART(Tell.said("notch.dart")),
    KEY_POCKET(Tell.said("notch.key-pocket")),
    COVER_FRONT(Tell.said("notch.cover-front")),
    COVER_BACK(Tell.said("notch.cover-back"));

    private final String word;
    private final Said said;

    NotchName(Said said) {
        this.word = name().toLowerCase(Locale.ROOT)
                .replace("mid_thigh", "mid-thigh")
                .replace('_', ' ');
        this.said = said;
    }

    /** As written in the report. */
    public String word() {
        return word;
    }

    public Said said() {
        return said;
    }

    @Override
    public String toString() {
        return word;
    }
}
