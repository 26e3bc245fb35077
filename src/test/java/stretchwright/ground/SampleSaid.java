package stretchwright.ground;

/** Sentences of a test's own. */
public final class SampleSaid {
    private SampleSaid() {}

    public static Said of(String words) {
        return words.isEmpty() ? Said.NOTHING : Said.of("sample", "words", Part.text(words));
    }
}
