package stretchwright.pattern;

import java.util.OptionalDouble;

/**
 * How the leg ends below.
 *
 * @param hem where a leg over or into a boot ends; without meaning for other legs
 * @param cuffHeight finished height of the folded cuff, mm; empty for a plain turned hem
 * @param strapWidth finished width of a strap under the arch, mm; empty for none
 * @param hemDrop how much lower the hem is behind than in front, mm; 0 for a level hem
 * @param growth length kept in the turned hem, to be let down later, mm
 */
public record LowerEnd(Hem hem, OptionalDouble cuffHeight, OptionalDouble strapWidth, double hemDrop, double growth) {
    /** Where on the boot the lower edge sits. */
    public enum Hem {
        /** Thin as a sock, worn inside the boot's shell. */
        INSIDE_BOOT("inside the boot"),
        /** At the boot's top edge. */
        TO_COLLAR("to the collar"),
        /** Level, as far below the ankle bone as the boot says. */
        OVER_LACES("over the laces"),
        /** The back down towards the sole, the front to the instep. */
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

    /** Depth of a turned hem of stretch cloth, mm: two needle rows over the raw edge (common practice, no source). */
    public static final double TURN_UP = 20;

    /** A curved edge turns up without ripples only when narrow, mm (common practice, no source). */
    public static final double NARROW_TURN_UP = 10;

    /**
     * A hem to the collar reaches this far below the boot's top edge, mm: in a lunge it rises 20 to 30 mm (makers'
     * common practice, no source: docs/maths/draft.md, hems).
     */
    public static final double LUNGE = 25;

    /** A plain turned hem. */
    public static final LowerEnd PLAIN =
            new LowerEnd(Hem.OVER_LACES, OptionalDouble.empty(), OptionalDouble.empty(), 0, 0);

    /** A folded cuff of this finished height, mm. */
    public static LowerEnd cuff(double height) {
        return new LowerEnd(Hem.OVER_LACES, OptionalDouble.of(height), OptionalDouble.empty(), 0, 0);
    }

    /** A plain turned hem at this place on the boot, lower behind than in front by so many mm. */
    public static LowerEnd hem(Hem hem, double hemDrop) {
        return new LowerEnd(hem, OptionalDouble.empty(), OptionalDouble.empty(), hemDrop, 0);
    }

    public LowerEnd withCuff(double height) {
        return new LowerEnd(hem, OptionalDouble.of(height), strapWidth, hemDrop, growth);
    }

    public LowerEnd strap(double width) {
        return new LowerEnd(hem, cuffHeight, OptionalDouble.of(width), hemDrop, growth);
    }

    public LowerEnd growing(double mm) {
        return new LowerEnd(hem, cuffHeight, strapWidth, hemDrop, mm);
    }

    /** Whether the leg ends over the boot, and not on the wearer's own leg inside it. */
    public boolean outsideBoot() {
        return hem != Hem.INSIDE_BOOT;
    }

    /** How deep the hem is turned where nothing else was asked for, mm. */
    public double turnUp() {
        return hemDrop > 0 || hem == Hem.WHOLE_BOOT ? NARROW_TURN_UP : TURN_UP;
    }
}
