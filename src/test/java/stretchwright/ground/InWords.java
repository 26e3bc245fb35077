package stretchwright.ground;

/** What was said, in millimetres, for tests that read it as a maker would. */
public final class InWords {
    private InWords() {}

    public static String words(Part part) {
        return Voice.plain().say(part);
    }
}
