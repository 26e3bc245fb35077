package stretchwright.web.draw;

import java.util.Locale;

/** What is under a boot. */
public enum BootKind {
    /** A heel block and a blade with toe picks. */
    FIGURE,
    /** A heel block, a plate, four wheels in two pairs and a stop in front. */
    ROLLER,
    /** No heel block; a holder with a blade that is round at both ends. */
    HOCKEY,
    /** No heel block; a frame with four wheels in one line. */
    INLINE;

    /** By the maker's own name for it; a figure boot where it says nothing. */
    public static BootKind of(String name) {
        String plain = name.toLowerCase(Locale.ROOT);
        if (plain.contains("inline")) {
            return INLINE;
        }
        if (plain.contains("hockey")) {
            return HOCKEY;
        }
        return plain.contains("roll") || plain.contains("quad") ? ROLLER : FIGURE;
    }

    boolean heeled() {
        return this == FIGURE || this == ROLLER;
    }

    boolean wheeled() {
        return this == ROLLER || this == INLINE;
    }
}
