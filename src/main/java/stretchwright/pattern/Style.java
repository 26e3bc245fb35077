package stretchwright.pattern;

import java.util.Map;
import java.util.OptionalDouble;

/**
 * What garment is wanted.
 *
 * @param leg how far down it reaches
 * @param dropBelowWaist how far below the waist its top edge (where the band is joined) sits, mm
 * @param bandHeight finished height of the folded waistband, mm
 * @param cuffHeight finished height of the folded cuff; empty for a plain turned hem
 * @param hold how firmly it is to hold
 * @param allowance seam allowance, mm
 * @param allowances exceptions by seam role
 * @param layWay which ways of laying are allowed
 */
public record Style(
        Leg leg,
        double dropBelowWaist,
        double bandHeight,
        OptionalDouble cuffHeight,
        Hold hold,
        double allowance,
        Map<Seam.Role, Double> allowances,
        LayWay layWay) {

    public enum Leg {
        OVER_BOOT,
        /** To where the ankle girth is taken. */
        ANKLE,
        /** A little below the fullest part of the calf. */
        CALF,
        /** A little above the kneecap's middle. */
        KNEE,
        /** Halfway between crotch and knee. */
        SHORT
    }

    public enum Hold {
        LIGHT,
        MEDIUM,
        FIRM
    }

    public enum LayWay {
        ANY,
        FOLDED,
        OPEN
    }

    public Style {
        allowances = Map.copyOf(allowances);
    }

    public double allowance(Seam.Role role) {
        return allowances.getOrDefault(role, allowance);
    }
}
