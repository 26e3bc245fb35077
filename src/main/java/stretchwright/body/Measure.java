package stretchwright.body;

import java.util.Arrays;
import java.util.Optional;

/** The measures of leg wear, by their ISO 8559-1 terms (the terms without one there are marked). All in mm. */
public enum Measure {
    STATURE("stature"),
    WAIST_GIRTH("waist girth"),
    HIP_GIRTH("hip girth"),
    THIGH_GIRTH("thigh girth"),
    MID_THIGH_GIRTH("mid-thigh girth"),
    KNEE_GIRTH("knee girth"),
    CALF_GIRTH("calf girth"),
    ANKLE_GIRTH("ankle girth"),
    WAIST_HEIGHT("waist height"),
    HIP_HEIGHT("hip height"),
    CROTCH_HEIGHT("crotch height"),
    KNEE_HEIGHT("knee height"),
    CALF_HEIGHT("calf height"),
    /** Where the ankle girth is taken; not the ankle bone. */
    ANKLE_HEIGHT("ankle height"),
    /** Outer ankle bone above the floor (lateral malleolus height). */
    ANKLE_BONE_HEIGHT("ankle bone height"),
    TOTAL_CROTCH_LENGTH("total crotch length"),
    BACK_CROTCH_LENGTH("back crotch length"),
    /** Round heel and instep, bare foot. */
    HEEL_GIRTH("heel girth"),
    FOOT_LENGTH("foot length");

    private final String term;

    Measure(String term) {
        this.term = term;
    }

    /** As written in the make file and the report. */
    public String term() {
        return term;
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
