package stretchwright.pattern;

import java.util.Locale;
import stretchwright.ground.Said;

/** What notches mark. */
public enum NotchName {
    HIP(Tell.said("notch.hip")),
    KNEE(Tell.said("notch.knee")),
    BOOT_TOP(Tell.said("notch.boot-top")),
    LENGTHEN_OR_SHORTEN_HERE(Tell.said("notch.lengthen-or-shorten-here")),
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
        this.word = name().toLowerCase(Locale.ROOT).replace('_', ' ');
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
