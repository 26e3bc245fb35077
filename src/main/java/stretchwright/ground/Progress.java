package stretchwright.ground;

/** Where a stage says what it is doing; the door decides whether and where it is shown. */
@FunctionalInterface
public interface Progress {
    void say(String line);

    /** Says nothing. */
    static Progress silent() {
        return line -> {};
    }
}
