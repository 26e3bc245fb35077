package stretchwright.fit;

import java.util.Locale;
import java.util.Optional;
import stretchwright.body.PoseLength;
import stretchwright.body.SkinExtension;
import stretchwright.ground.Said;
import stretchwright.pattern.Level;

/** Where a pose draws the cloth: over a joint, or all along a tape over the body. */
public enum Region {
    SEAT(Tell.said("region.seat")),
    KNEE(Tell.said("region.knee")),
    BACK_WAIST_TO_FRONT_WAIST(Tell.said("region.back-to-front")),
    TOP_OF_THIGH_TO_SHIN(Tell.said("region.thigh-to-shin")),
    FRONT_WAIST_TO_KNEECAP(Tell.said("region.waist-to-knee")),
    INNER_ANKLE_TO_INNER_ANKLE(Tell.said("region.ankle-to-ankle"));

    private final Said said;

    Region(Said said) {
        this.said = said;
    }

    static Region of(SkinExtension.Region region) {
        return switch (region) {
            case SEAT -> SEAT;
            case KNEE -> KNEE;
        };
    }

    static Region of(PoseLength.Course course) {
        return switch (course) {
            case BACK_TO_FRONT -> BACK_WAIST_TO_FRONT_WAIST;
            case THIGH_TO_SHIN -> TOP_OF_THIGH_TO_SHIN;
            case WAIST_TO_KNEE -> FRONT_WAIST_TO_KNEECAP;
            case ANKLE_TO_ANKLE -> INNER_ANKLE_TO_INNER_ANKLE;
        };
    }

    /** Whose width decides there; empty along a tape, which runs over several. */
    public Optional<Level.Name> level() {
        return switch (this) {
            case SEAT -> Optional.of(Level.Name.HIP);
            case KNEE -> Optional.of(Level.Name.KNEE);
            default -> Optional.empty();
        };
    }

    /** As written in the report: "seat". */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    public Said said() {
        return said;
    }
}
