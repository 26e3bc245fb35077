package stretchwright.pattern;

import java.util.Locale;
import java.util.Optional;
import stretchwright.ground.Said;

/** What is written at a line inside a piece. */
public enum MarkName {
    HIP(Tell.said("mark.hip")),
    CROTCH(Tell.said("mark.crotch")),
    MID_THIGH(Tell.said("mark.mid-thigh")),
    KNEE(Tell.said("mark.knee")),
    CALF(Tell.said("mark.calf")),
    ANKLE(Tell.said("mark.ankle")),
    BOOT_TOP(Tell.said("mark.boot-top")),
    LENGTHEN_OR_SHORTEN_RISE(Tell.said("mark.lengthen-or-shorten-rise")),
    LENGTHEN_OR_SHORTEN_THIGH(Tell.said("mark.lengthen-or-shorten-thigh")),
    LENGTHEN_OR_SHORTEN_CALF(Tell.said("mark.lengthen-or-shorten-calf")),
    FOLD_ALONG_HERE(Tell.said("mark.fold-along-here")),
    FOLD_UP_HERE(Tell.said("mark.fold-up-here")),
    FOLD_THE_DART(Tell.said("mark.fold-the-dart")),
    FOLD_THE_CASING_DOWN_ALONG_HERE(Tell.said("mark.fold-the-casing-down-along-here")),
    ROW_THAT_CLOSES_THE_CASING(Tell.said("mark.row-that-closes-the-casing")),
    ROW_BELOW_THE_ELASTIC(Tell.said("mark.row-below-the-elastic")),
    ROW_BELOW_THE_CORD(Tell.said("mark.row-below-the-cord")),
    EYELET(Tell.said("mark.eyelet")),
    KEY_POCKET("key pocket, on one half only", Tell.said("mark.key-pocket")),
    PHONE_POCKET(Tell.said("mark.phone-pocket")),
    HIP_PAD_POCKET(Tell.said("mark.hip-pad-pocket")),
    TAILBONE_PAD_POCKET(Tell.said("mark.tailbone-pad-pocket")),
    KNEE_PAD_POCKET(Tell.said("mark.knee-pad-pocket"));

    private final String word;
    private final Said said;

    MarkName(Said said) {
        this.word = name().toLowerCase(Locale.ROOT)
                .replace("mid_thigh", "mid-thigh")
                .replace('_', ' ');
        this.said = said;
    }

    MarkName(String word, Said said) {
        this.word = word;
        this.said = said;
    }

    /** As written in the report. */
    public String word() {
        return word;
    }

    /** All that is written there. */
    public Said said() {
        return isChange() ? Tell.said("mark.change", said, how()) : said;
    }

    /** What is done there, of a line at which a piece is made longer or shorter: the first half of what is written. */
    public Said what() {
        return said;
    }

    /** And how: the second half. */
    public Said how() {
        return Tell.said("mark.change-how");
    }

    /** Whether what is sewn on here is a pocket of the leg. */
    public boolean isPocket() {
        return switch (this) {
            case PHONE_POCKET, HIP_PAD_POCKET, TAILBONE_PAD_POCKET, KNEE_PAD_POCKET -> true;
            default -> false;
        };
    }

    /** Whether the piece is cut through here to be made longer or shorter. */
    public boolean isChange() {
        return switch (this) {
            case LENGTHEN_OR_SHORTEN_RISE, LENGTHEN_OR_SHORTEN_THIGH, LENGTHEN_OR_SHORTEN_CALF -> true;
            default -> false;
        };
    }

    /** The level whose width is told along this line; empty of every other line. */
    public Optional<Level.Name> level() {
        return switch (this) {
            case HIP -> Optional.of(Level.Name.HIP);
            case CROTCH -> Optional.of(Level.Name.CROTCH);
            case MID_THIGH -> Optional.of(Level.Name.MID_THIGH);
            case KNEE -> Optional.of(Level.Name.KNEE);
            case CALF -> Optional.of(Level.Name.CALF);
            case ANKLE -> Optional.of(Level.Name.ANKLE);
            case BOOT_TOP -> Optional.of(Level.Name.BOOT_TOP);
            default -> Optional.empty();
        };
    }

    @Override
    public String toString() {
        return word;
    }
}
