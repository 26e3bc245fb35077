package stretchwright.pattern;

import java.util.Locale;
import stretchwright.ground.Said;

/**
 * A height at which the garment's flat width is compared with the body or the boot.
 *
 * @param name which one
 * @param height on the flat piece, mm; 0 is the floor before the along reduction; of the waist the legs' top edge at the
 *     side line
 * @param width flat width of one leg, or of the whole garment above the crotch, mm
 * @param leg of which it is
 */
public record Level(Name name, double height, double width, WhichLeg leg) {
    /** A level of both legs, or of the whole garment. */
    public Level(Name name, double height, double width) {
        this(name, height, width, WhichLeg.BOTH);
    }

    /** From the top down; the words of the report. */
    public enum Name {
        WAIST(Tell.said("level.waist")),
        HIP(Tell.said("level.hip")),
        CROTCH(Tell.said("level.crotch")),
        MID_THIGH(Tell.said("level.mid-thigh")),
        KNEE(Tell.said("level.knee")),
        CALF(Tell.said("level.calf")),
        ANKLE(Tell.said("level.ankle")),
        BOOT_TOP(Tell.said("level.boot-top")),
        HEM(Tell.said("level.hem"));

        private final Said said;

        Name(Said said) {
            this.said = said;
        }

        /** As written in the make file and the report: "mid-thigh", "boot top". */
        public String word() {
            return this == MID_THIGH
                    ? "mid-thigh"
                    : name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }

        public Said said() {
            return said;
        }

        /** Waist and hip go round the whole body, the others round one leg. */
        public boolean wholeBody() {
            return this == WAIST || this == HIP;
        }
    }
}
