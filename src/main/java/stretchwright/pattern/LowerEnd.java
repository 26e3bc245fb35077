package stretchwright.pattern;

import java.util.OptionalDouble;

/**
 * How the leg ends below.
 *
 * @param hem where a leg over or into a boot ends; without meaning for other legs
 * @param cuffHeight finished height of the folded cuff, mm; empty for a plain turned hem
 * @param strapWidth finished width of an elastic strap under the arch, mm; empty for none
 */
public record LowerEnd(Hem hem, OptionalDouble cuffHeight, OptionalDouble strapWidth) {
    /** Where on the boot the lower edge sits. */
    public enum Hem {
        /** Above the collar, worn inside. */
        INSIDE_BOOT("inside the boot"),
        /** At the boot's top edge. */
        TO_COLLAR("to the collar"),
        /** Level, as far below the ankle bone as the boot says. */
        OVER_LACES("over the laces"),
        /** The back down to the sole, the front to the instep. */
        OVER_HEEL("over the heel"),
        /** To the sole all round, open for the blade or plate. */
        WHOLE_BOOT("whole boot");

        private final String word;

        Hem(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** A plain turned hem. */
    public static final LowerEnd PLAIN = new LowerEnd(Hem.OVER_LACES, OptionalDouble.empty(), OptionalDouble.empty());

    /** A folded cuff of this finished height, mm. */
    public static LowerEnd cuff(double height) {
        return new LowerEnd(Hem.OVER_LACES, OptionalDouble.of(height), OptionalDouble.empty());
    }
}
