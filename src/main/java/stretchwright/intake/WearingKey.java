package stretchwright.intake;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Numbers;
import stretchwright.pattern.Level;

/**
 * What may be changed after wearing, and within which bounds all such changes together must stay. The bounds are those of
 * makers (makers' troubles 1.1 to 1.3): common practice, no source. Beyond them the measures are wrong and not the fit.
 */
public enum WearingKey {
    RISE("rise", -30, 40),
    FRONT_WAIST("front waist", -15, 20),
    BACK_WAIST("back waist", -25, 30),
    WAIST("ease at waist", 0, 30),
    HIP("ease at hip", 0, 40),
    CROTCH("ease at crotch", -15, 20),
    KNEE("ease at knee", -10, 0),
    CALF("ease at calf", 0, 25),
    LEG_LENGTH("leg length", -30, 30),
    GROWTH("growth", 0, 50),
    BACK("back", "shaped seam"),
    BAND("band", "contoured"),
    GUSSET("gusset", "75 x 50 mm");

    private final String word;
    private final double least;
    private final double most;
    private final String choice;

    WearingKey(String word, double least, double most) {
        this.word = word;
        this.least = least;
        this.most = most;
        this.choice = "";
    }

    WearingKey(String word, String choice) {
        this.word = word;
        this.least = 0;
        this.most = 1;
        this.choice = choice;
    }

    /** As written in the make file. */
    public String word() {
        return word;
    }

    /** Made once or not at all; the others are lengths. */
    public boolean isChoice() {
        return !choice.isEmpty();
    }

    public String choice() {
        return choice;
    }

    public Limits.Range range() {
        return new Limits.Range(least, most, "all changes after wearing together; beyond it measure again instead");
    }

    /** The level at which it adds width. */
    Optional<Level.Name> level() {
        return switch (this) {
            case WAIST -> Optional.of(Level.Name.WAIST);
            case HIP -> Optional.of(Level.Name.HIP);
            case CROTCH -> Optional.of(Level.Name.CROTCH);
            case KNEE -> Optional.of(Level.Name.KNEE);
            case CALF -> Optional.of(Level.Name.CALF);
            case RISE, FRONT_WAIST, BACK_WAIST, LEG_LENGTH, GROWTH, BACK, BAND, GUSSET -> Optional.empty();
        };
    }

    /** "-10 mm", "shaped seam". */
    public String shown(double amount) {
        return isChoice() ? choice : (amount > 0 ? "+" : "") + Numbers.plain(amount) + " mm";
    }

    static List<String> words() {
        return Arrays.stream(values()).map(WearingKey::word).toList();
    }
}
