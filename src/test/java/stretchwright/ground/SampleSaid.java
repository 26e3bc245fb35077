package stretchwright.ground;

/** Sentences of a test's own. */
public final class SampleSaid {
    private SampleSaid() {}

    public static Said said(String words) {
        return words.isEmpty() ? Said.NOTHING : Said.of("sample", "said", Part.text(words));
    }
}
