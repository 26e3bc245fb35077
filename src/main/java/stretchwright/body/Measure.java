package stretchwright.body;

import java.util.Arrays;
import java.util.Optional;
import stretchwright.ground.Said;

/** The measures of leg wear, by their ISO 8559-1 terms (the terms without one there are marked). All in mm. */
public enum Measure {
    STATURE("stature", Tell.said("measure.stature")),
    WAIST_GIRTH("waist girth", Tell.said("measure.waist-girth")),
    HIP_GIRTH("hip girth", Tell.said("measure.hip-girth")),
    THIGH_GIRTH("thigh girth", Tell.said("measure.thigh-girth")),
    MID_THIGH_GIRTH("mid-thigh girth", Tell.said("measure.mid-thigh-girth")),
    KNEE_GIRTH("knee girth", Tell.said("measure.knee-girth")),
    CALF_GIRTH("calf girth", Tell.said("measure.calf-girth")),
    ANKLE_GIRTH("ankle girth", Tell.said("measure.ankle-girth")),
    WAIST_HEIGHT("waist height", Tell.said("measure.waist-height")),
    HIP_HEIGHT("hip height", Tell.said("measure.hip-height")),
    CROTCH_HEIGHT("crotch height", Tell.said("measure.crotch-height")),
    KNEE_HEIGHT("knee height", Tell.said("measure.knee-height")),
    CALF_HEIGHT("calf height", Tell.said("measure.calf-height")),
    /** Where the ankle girth is taken; not the ankle bone. */
    ANKLE_HEIGHT("ankle height", Tell.said("measure.ankle-height")),
    /** Outer ankle bone above the floor (lateral malleolus height). */
    ANKLE_BONE_HEIGHT("ankle bone height", Tell.said("measure.ankle-bone-height")),
    TOTAL_CROTCH_LENGTH("total crotch length", Tell.said("measure.total-crotch-length")),
    BACK_CROTCH_LENGTH("back crotch length", Tell.said("measure.back-crotch-length")),
    /** Round heel and instep, bare foot. */
    HEEL_GIRTH("heel girth", Tell.said("measure.heel-girth")),
    FOOT_LENGTH("foot length", Tell.said("measure.foot-length"));

    private final String term;
    private final Said said;

    Measure(String term, Said said) {
        this.term = term;
        this.said = said;
    }

    /** As written in the make file and the report. */
    public String term() {
        return term;
    }

    public Said said() {
        return said;
    }

    /** Whether each leg has its own. */
    public boolean ofLeg() {
        return switch (this) {
            case THIGH_GIRTH, MID_THIGH_GIRTH, KNEE_GIRTH, CALF_GIRTH, ANKLE_GIRTH, HEEL_GIRTH, FOOT_LENGTH -> true;
            case CROTCH_HEIGHT, KNEE_HEIGHT, CALF_HEIGHT, ANKLE_HEIGHT, ANKLE_BONE_HEIGHT -> true;
            case STATURE, WAIST_GIRTH, HIP_GIRTH, WAIST_HEIGHT, HIP_HEIGHT, TOTAL_CROTCH_LENGTH, BACK_CROTCH_LENGTH ->
                false;
        };
    }

    /** Whether it goes round a leg or foot, so that a socket or brace can lie under the tape. */
    public boolean roundLeg() {
        return ofLeg() && term.endsWith("girth");
    }

    public static Optional<Measure> of(String term) {
        return Arrays.stream(values()).filter(m -> m.term.equals(term)).findFirst();
    }
}
