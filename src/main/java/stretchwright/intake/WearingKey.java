package stretchwright.intake;

import java.util.Optional;
import stretchwright.ground.Numbers;

/**
 * What may be changed after wearing, and within which bounds all such changes together must stay. The bounds are those of
 * makers (makers' troubles 1.1 to 1.3): common practice, no source. Beyond them the measures are wrong and not the fit.
 * Which key of the style it changes, and how, stands in that key's row.
 *
 * @param word as written in the make file
 * @param bounds of a length, mm; empty for a choice
 * @param choice what is chosen, as written; empty for a length
 */
public record WearingKey(String word, Optional<Range> bounds, String choice) {
    public static final WearingKey RISE = by("rise", -30, 40);
    public static final WearingKey FRONT_WAIST = by("front waist", -15, 20);
    public static final WearingKey BACK_WAIST = by("back waist", -25, 30);
    public static final WearingKey WAIST = by("ease at waist", 0, 30);
    public static final WearingKey HIP = by("ease at hip", 0, 40);
    public static final WearingKey CROTCH = by("ease at crotch", -15, 20);
    public static final WearingKey KNEE = by("ease at knee", -10, 0);
    public static final WearingKey CALF = by("ease at calf", 0, 25);
    public static final WearingKey FRONT_CROTCH_POINT = by("front crotch point", -15, 15);
    public static final WearingKey BACK_CROTCH_POINT = by("back crotch point", -15, 20);
    public static final WearingKey LEG_LENGTH = by("leg length", -30, 30);
    public static final WearingKey GROWTH = by("growth", 0, 50);
    public static final WearingKey BACK = once("back", "shaped seam");
    public static final WearingKey BAND = once("band", "contoured");
    public static final WearingKey GUSSET = once("gusset", "75 x 50 mm");

    static WearingKey by(String word, double least, double most) {
        return new WearingKey(word, Optional.of(new Range(least, most, "why.worn")), "");
    }

    static WearingKey once(String word, String choice) {
        return new WearingKey(word, Optional.empty(), choice);
    }

    /** Made once or not at all; the others are lengths. */
    public boolean isChoice() {
        return !choice.isEmpty();
    }

    /** Of a choice from not made to made. */
    public Range range() {
        return bounds.orElse(new Range(0, 1, "why.worn"));
    }

    /** "-10 mm", "shaped seam". */
    public String shown(double amount) {
        return isChoice() ? choice : (amount > 0 ? "+" : "") + Numbers.plain(amount) + " mm";
    }
}
