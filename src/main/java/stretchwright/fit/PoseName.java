package stretchwright.fit;

import java.util.Arrays;
import java.util.Locale;
import stretchwright.body.SkinExtension;
import stretchwright.ground.Said;

/** What asks cloth and seams to stretch: a pose, or the garment being pulled on. */
public enum PoseName {
    STANDING(Tell.said("pose.standing")),
    SITTING(Tell.said("pose.sitting")),
    DEEP_KNEE_BEND(Tell.said("pose.deep-knee-bend")),
    SIT_SPIN(Tell.said("pose.sit-spin")),
    LUNGE(Tell.said("pose.lunge")),
    HIGH_LEG(Tell.said("pose.high-leg")),
    /** Of the wearer's own, by tape. */
    YOUR_POSE(Tell.said("pose.yours")),
    PULLED_OVER_THE_HIPS(Tell.said("pose.over-hips")),
    PULLED_OVER_THE_HEEL(Tell.said("pose.over-heel"));

    private final Said said;

    PoseName(Said said) {
        this.said = said;
    }

    static PoseName of(SkinExtension e) {
        return Arrays.stream(values())
                .filter(p -> p.word().equals(e.pose()))
                .findFirst()
                .orElseThrow();
    }

    /** Whether it is asked by pulling the garment on. */
    boolean pulledOn() {
        return this == PULLED_OVER_THE_HIPS || this == PULLED_OVER_THE_HEEL;
    }

    /** As written in the report: "sit spin". */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    public Said said() {
        return said;
    }
}
