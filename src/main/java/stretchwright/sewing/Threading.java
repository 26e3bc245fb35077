package stretchwright.sewing;

import stretchwright.ground.Said;

/** Where a thread of a machine runs. */
public enum Threading {
    NEEDLE("needle", Tell.said("thread.needle")),
    LEFT_NEEDLE("left needle", Tell.said("thread.left-needle")),
    RIGHT_NEEDLE("right needle", Tell.said("thread.right-needle")),
    UPPER_LOOPER("upper looper", Tell.said("thread.upper-looper")),
    LOWER_LOOPER("lower looper", Tell.said("thread.lower-looper")),
    LOOPER("looper", Tell.said("thread.looper")),
    BOBBIN("bobbin", Tell.said("thread.bobbin"));

    private final String word;
    private final Said said;

    Threading(String word, Said said) {
        this.word = word;
        this.said = said;
    }

    /** As the report has it, the same in every language. */
    public String word() {
        return word;
    }

    /** For people. */
    public Said said() {
        return said;
    }

    boolean isLooper() {
        return this == UPPER_LOOPER || this == LOWER_LOOPER || this == LOOPER;
    }
}
