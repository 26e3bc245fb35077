package stretchwright.pattern;

import java.util.Locale;
import stretchwright.ground.Said;

/** What kinds of pieces there are. */
public enum PieceKind {
    /** A whole leg. */
    LEG(Tell.said("piece.leg")),
    FRONT_LEG(Tell.said("piece.front-leg")),
    SIDE_PANEL(Tell.said("piece.side-panel")),
    BACK_LEG(Tell.said("piece.back-leg")),
    WAISTBAND(Tell.said("piece.waistband")),
    /** The inner layer of a contoured band. */
    WAISTBAND_FACING(Tell.said("piece.waistband-facing")),
    KEY_POCKET(Tell.said("piece.key-pocket")),
    CUFF(Tell.said("piece.cuff")),
    BOOT_COVER(Tell.said("piece.boot-cover")),
    STRAP(Tell.said("piece.strap")),
    GUSSET(Tell.said("piece.gusset")),
    PHONE_POCKET(Tell.said("piece.phone-pocket")),
    HIP_PAD_POCKET(Tell.said("piece.hip-pad-pocket")),
    TAILBONE_PAD_POCKET(Tell.said("piece.tailbone-pad-pocket")),
    KNEE_PAD_POCKET(Tell.said("piece.knee-pad-pocket")),
    /** A piece with a name of its own, such as one that was not drafted here. */
    OWN(Tell.said("piece.own"));

    private final String word;
    private final Said said;

    PieceKind(Said said) {
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

    /** Whether it is a leg, or the front or the back of one. */
    public boolean isLeg() {
        return this == LEG || this == FRONT_LEG || this == BACK_LEG;
    }

    /** Whether it reaches from the waist to the lower end: a leg, or one of its parts. */
    public boolean isOfLeg() {
        return isLeg() || this == SIDE_PANEL;
    }

    /** Whether it is a layer of the band. */
    public boolean isBand() {
        return this == WAISTBAND || this == WAISTBAND_FACING;
    }

    /** Whether it is sewn onto the leg, or hangs from its waist seam. */
    public boolean isPocket() {
        return switch (this) {
            case PHONE_POCKET, HIP_PAD_POCKET, TAILBONE_PAD_POCKET, KNEE_PAD_POCKET -> true;
            default -> false;
        };
    }

    @Override
    public String toString() {
        return word;
    }
}
