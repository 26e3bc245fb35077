package stretchwright.body;

import java.util.Locale;

/** The wearer's own left and right. */
public enum Side {
    LEFT,
    RIGHT;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
