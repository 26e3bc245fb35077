package stretchwright.pattern;

import java.util.Locale;

/**
 * A height at which the garment's flat width is compared with the body or the boot.
 *
 * @param name which one
 * @param height on the flat piece, mm; 0 is the floor before the along reduction; of the waist the legs' top edge at the
 *     side line
 * @param width flat width of one leg, or of the whole garment above the crotch, mm
 * @param leg "left" or "right" where the legs differ, else empty
 */
public record Level(Name name, double height, double width, String leg) {
    /** A level of both legs, or of the whole garment. */
    public Level(Name name, double height, double width) {
        this(name, height, width, "");
    }

    /** From the top down; the words of the report. */
    public enum Name {
        WAIST,
        HIP,
        CROTCH,
        MID_THIGH,
        KNEE,
        CALF,
        ANKLE,
        BOOT_TOP,
        HEM;

        /** As written in the report and on paper: "mid-thigh", "boot top". */
        public String word() {
            return this == MID_THIGH
                    ? "mid-thigh"
                    : name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }

        /** Waist and hip go round the whole body, the others round one leg. */
        public boolean wholeBody() {
            return this == WAIST || this == HIP;
        }
    }
}
