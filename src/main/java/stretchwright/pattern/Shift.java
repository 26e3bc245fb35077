package stretchwright.pattern;

import java.util.Locale;
import java.util.Optional;
import stretchwright.ground.Said;

/**
 * A point or an edge of the leg that a maker may move by hand: where it stands otherwise than drafted. Above 0 the garment
 * grows there: outwards, up at the waist, down at crotch and hem. The bounds are what makers change at one place (makers'
 * habit, no source); beyond them the measures are wrong and not the draft.
 */
public enum Shift {
    FRONT_WAIST(Tell.said("shift.front-waist"), Way.UP, -50, 60),
    BACK_WAIST(Tell.said("shift.back-waist"), Way.UP, -50, 60),
    /** The waist edge at the side line; its two ends stay. */
    SIDE_WAIST(Tell.said("shift.side-waist"), Way.UP, -30, 30),
    /** The centre front seam at the hip line; the waist stays. */
    FRONT_HIP(Tell.said("shift.front-hip"), Way.OUT, -15, 15),
    BACK_HIP(Tell.said("shift.back-hip"), Way.OUT, -15, 20),
    /** With its inseam, down to nothing at the knee; the crotch seam is as much longer. */
    FRONT_CROTCH_POINT(Tell.said("shift.front-crotch-point"), Way.OUT, -15, 20),
    BACK_CROTCH_POINT(Tell.said("shift.back-crotch-point"), Way.OUT, -20, 30),
    /** Both crotch points; the waist stays, each half of the crotch seam is as much longer. */
    CROTCH_LINE(Tell.said("shift.crotch-line"), Way.DOWN, -15, 10),
    FRONT_MID_THIGH(Tell.said("shift.front-mid-thigh"), "front mid-thigh", Way.OUT, -15, 15),
    BACK_MID_THIGH(Tell.said("shift.back-mid-thigh"), "back mid-thigh", Way.OUT, -15, 15),
    FRONT_KNEE(Tell.said("shift.front-knee"), Way.OUT, -15, 15),
    BACK_KNEE(Tell.said("shift.back-knee"), Way.OUT, -15, 15),
    FRONT_CALF(Tell.said("shift.front-calf"), Way.OUT, -15, 15),
    BACK_CALF(Tell.said("shift.back-calf"), Way.OUT, -15, 15),
    HEM(Tell.said("shift.hem"), Way.DOWN, -30, 40),
    /** The lower edge at the side line; its ends at the inseam stay. */
    SIDE_HEM(Tell.said("shift.side-hem"), Way.DOWN, -15, 15);

    /** Where above 0 leads. */
    public enum Way {
        UP(Tell.said("shift.up")),
        DOWN(Tell.said("shift.down")),
        OUT(Tell.said("shift.out"));

        private final Said said;

        Way(Said said) {
            this.said = said;
        }

        public Said said() {
            return said;
        }

        /** Which way an amount leads: below 0 the other one. */
        public Said of(double mm) {
            return mm >= 0
                    ? said
                    : switch (this) {
                        case UP -> DOWN.said;
                        case DOWN -> UP.said;
                        case OUT -> Tell.said("shift.in");
                    };
        }
    }

    private final Said said;
    private final String word;
    private final Way way;
    private final double least;
    private final double most;

    Shift(Said said, Way way, double least, double most) {
        this.said = said;
        this.word = name().toLowerCase(Locale.ROOT).replace('_', ' ');
        this.way = way;
        this.least = least;
        this.most = most;
    }

    Shift(Said said, String word, Way way, double least, double most) {
        this.said = said;
        this.word = word;
        this.way = way;
        this.least = least;
        this.most = most;
    }

    /** As written in the make file. */
    public String word() {
        return word;
    }

    public Way way() {
        return way;
    }

    /** mm. */
    public double least() {
        return least;
    }

    public double most() {
        return most;
    }

    /** "back crotch point". */
    public Said said() {
        return said;
    }

    /** The level of the leg whose front or back edge it moves. */
    public Optional<Level.Name> level() {
        return switch (this) {
            case FRONT_MID_THIGH, BACK_MID_THIGH -> Optional.of(Level.Name.MID_THIGH);
            case FRONT_KNEE, BACK_KNEE -> Optional.of(Level.Name.KNEE);
            case FRONT_CALF, BACK_CALF -> Optional.of(Level.Name.CALF);
            default -> Optional.empty();
        };
    }

    /** Of the front edge at a level; empty where none may be moved there. */
    public static Optional<Shift> front(Level.Name level) {
        return switch (level) {
            case MID_THIGH -> Optional.of(FRONT_MID_THIGH);
            case KNEE -> Optional.of(FRONT_KNEE);
            case CALF -> Optional.of(FRONT_CALF);
            case WAIST, HIP, CROTCH, ANKLE, BOOT_TOP, HEM -> Optional.empty();
        };
    }

    public static Optional<Shift> back(Level.Name level) {
        return switch (level) {
            case MID_THIGH -> Optional.of(BACK_MID_THIGH);
            case KNEE -> Optional.of(BACK_KNEE);
            case CALF -> Optional.of(BACK_CALF);
            case WAIST, HIP, CROTCH, ANKLE, BOOT_TOP, HEM -> Optional.empty();
        };
    }
}
