package stretchwright.body;

import java.util.Locale;
import stretchwright.ground.Said;

/** The wearer's own left and right. */
public enum Side {
    LEFT(Tell.said("side.left")),
    RIGHT(Tell.said("side.right"));

    private final Said said;

    Side(Said said) {
        this.said = said;
    }

    /** As written in the make file and the report. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public Said said() {
        return said;
    }
}
