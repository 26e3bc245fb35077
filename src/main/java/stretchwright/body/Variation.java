package stretchwright.body;

import java.util.Locale;
import java.util.Optional;
import stretchwright.ground.Said;

/**
 * A way in which a figure differs from the middle one that tape measures may not tell: named by who looks at the wearer, with
 * an amount. The amounts are those of makers for trousers and tights (6 to 25 mm off for a sway back, up to 20 mm on for a
 * full seat): common practice, no source. What each moves: docs/maths/draft.md, "Figures".
 */
public enum Variation {
    FULL_SEAT(Tell.said("variation.full-seat"), 3, 30),
    FLAT_SEAT(Tell.said("variation.flat-seat"), 3, 20),
    FULL_FRONT(Tell.said("variation.full-front"), 3, 30),
    SWAYED_BACK(Tell.said("variation.swayed-back"), 3, 25),
    STRAIGHT_BACK(Tell.said("variation.straight-back"), 3, 25),
    THIGHS_FORWARD(Tell.said("variation.thighs-forward"), 3, 15),
    KNOCK_KNEES(Tell.said("variation.knock-knees"), 3, 15),
    BOW_LEGS(Tell.said("variation.bow-legs"), 3, 15);

    private final Said said;
    private final double least;
    private final double most;

    Variation(Said said, double least, double most) {
        this.said = said;
        this.least = least;
        this.most = most;
    }

    /** As written in the make file. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    public Said said() {
        return said;
    }

    /** mm. */
    public double least() {
        return least;
    }

    public double most() {
        return most;
    }

    /** The one that says the contrary. */
    public Optional<Variation> contrary() {
        return switch (this) {
            case FULL_SEAT -> Optional.of(FLAT_SEAT);
            case FLAT_SEAT -> Optional.of(FULL_SEAT);
            case SWAYED_BACK -> Optional.of(STRAIGHT_BACK);
            case STRAIGHT_BACK -> Optional.of(SWAYED_BACK);
            case KNOCK_KNEES -> Optional.of(BOW_LEGS);
            case BOW_LEGS -> Optional.of(KNOCK_KNEES);
            case FULL_FRONT, THIGHS_FORWARD -> Optional.empty();
        };
    }
}
