package stretchwright.ground;

/** What was said, in millimetres, for tests that read it as a maker would; and what tests invent. */
public final class InWords {
    private InWords() {}

    public static String words(Part part) {
        return Voice.plain().say(part);
    }

    /** A sentence that no room says. */
    public static Said said(String invented) {
        return Said.of("sample", "words", Part.text(invented));
    }
}
