package stretchwright.body;

import java.util.Locale;

/** Chooses the survey used for estimates and plausibility. */
public enum Figure {
    WOMAN,
    MAN,
    CHILD;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
