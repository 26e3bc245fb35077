package stretchwright.pattern;

import java.util.Map;
import java.util.OptionalDouble;

/**
 * What garment is wanted.
 *
 * @param leg how far down it reaches
 * @param lower how it ends there
 * @param top how it ends above
 * @param parts into which parts the leg is cut, and what is added
 * @param hold how firmly it is to hold
 * @param allowance seam allowance, mm
 * @param allowances exceptions by seam role
 * @param lay how the pieces are to be laid
 * @param ease what the wearer wants added to (or, below 0, taken off) the flat width at a level, mm
 * @param shifts points and edges that the maker moves
 */
public record Style(
        Leg leg,
        LowerEnd lower,
        TopEnd top,
        Parts parts,
        Hold hold,
        double allowance,
        Map<Seam.Role, Double> allowances,
        LayTerms lay,
        Map<Level.Name, Double> ease,
        Shifts shifts) {

    /** Without ease of one's own. */
    public Style(
            Leg leg,
            LowerEnd lower,
            TopEnd top,
            Parts parts,
            Hold hold,
            double allowance,
            Map<Seam.Role, Double> allowances,
            LayTerms lay) {
        this(leg, lower, top, parts, hold, allowance, allowances, lay, Map.of(), Shifts.NONE);
    }

    public enum Leg {
        OVER_BOOT,
        /** To where the ankle girth is taken. */
        ANKLE,
        /** Past the ankle, held under the arch of the foot. */
        STIRRUP,
        /** A little below the fullest part of the calf. */
        CALF,
        /** A little above the kneecap's middle. */
        KNEE,
        /** Halfway between crotch and knee. */
        SHORT
    }

    /** Ways of laying the cloth to be cut. */
    public enum LayWay {
        /** Whichever is shortest. */
        ANY,
        /** Lengthwise, selvage on selvage. */
        FOLDED,
        /** One layer. */
        OPEN,
        /** Cut end on cut end: the upper layer lies the other way round. */
        FOLDED_CROSSWISE,
        /** Lengthwise, one selvage short of the other. */
        FOLDED_OFF_THE_MIDDLE,
        /** What is cut in pairs from a folded stretch, the rest from an open one. */
        PART_FOLDED
    }

    public Style {
        allowances = Map.copyOf(allowances);
        ease = Map.copyOf(ease);
    }

    /** The usual: at the waist, a straight folded band of 65 mm, a plain hem, medium hold, 7 mm allowance, one piece per leg. */
    public static Style usual(Leg leg) {
        return new Style(
                leg,
                LowerEnd.PLAIN,
                TopEnd.band(65),
                Parts.PLAIN,
                Hold.Named.MEDIUM,
                7,
                Map.of(),
                LayTerms.of(LayWay.ANY));
    }

    public Style with(LowerEnd other) {
        return new Style(leg, other, top, parts, hold, allowance, allowances, lay, ease, shifts);
    }

    public Style with(TopEnd other) {
        return new Style(leg, lower, other, parts, hold, allowance, allowances, lay, ease, shifts);
    }

    public Style with(Parts other) {
        return new Style(leg, lower, top, other, hold, allowance, allowances, lay, ease, shifts);
    }

    public Style with(Hold other) {
        return new Style(leg, lower, top, parts, other, allowance, allowances, lay, ease, shifts);
    }

    public Style with(double usualAllowance, Map<Seam.Role, Double> exceptions) {
        return new Style(leg, lower, top, parts, hold, usualAllowance, exceptions, lay, ease, shifts);
    }

    /** With ease of one's own at some levels, mm. */
    public Style withEase(Map<Level.Name, Double> other) {
        return new Style(leg, lower, top, parts, hold, allowance, allowances, lay, other, shifts);
    }

    public Style with(Shifts other) {
        return new Style(leg, lower, top, parts, hold, allowance, allowances, lay, ease, other);
    }

    public Style with(LayTerms other) {
        return new Style(leg, lower, top, parts, hold, allowance, allowances, other, ease, shifts);
    }

    public LayWay layWay() {
        return lay.way();
    }

    public double dropBelowWaist() {
        return top.dropBelowWaist();
    }

    public double bandHeight() {
        return top.band().height();
    }

    public OptionalDouble cuffHeight() {
        return lower.cuffHeight();
    }

    /** What is turned up at a plain hem, with what is kept there for growth, mm. */
    public double hemAllowance() {
        return allowances.getOrDefault(Seam.Role.HEM, lower.turnUp()) + lower.growth();
    }

    public double allowance(Seam.Role role) {
        return allowances.getOrDefault(role, allowance);
    }
}
