package stretchwright.workroom.store;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a workroom holds. */
public enum Kind {
    WEARER,
    FABRIC,
    BOOT,
    STYLE,
    MAKE,
    /** What was noted about one of the others: after wearing, when it was cut, that its wearer agreed. */
    NOTE;

    /** As it stands in the database, in archives and on the screen. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Kind> of(String word) {
        return Arrays.stream(values()).filter(k -> k.word().equals(word)).findFirst();
    }

    /** Whether no two of them may have one name. */
    public boolean named() {
        return this != NOTE;
    }
}
