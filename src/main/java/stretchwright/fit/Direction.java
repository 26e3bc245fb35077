package stretchwright.fit;

import java.util.Locale;
import stretchwright.ground.Said;

/** Of the cloth on the leg: round it, or down it. */
public enum Direction {
    ACROSS(Tell.said("direction.across")),
    ALONG(Tell.said("direction.along"));

    private final Said said;

    Direction(Said said) {
        this.said = said;
    }

    /** As written in the report. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public Said said() {
        return said;
    }
}
