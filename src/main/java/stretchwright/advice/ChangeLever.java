package stretchwright.advice;

import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;
import stretchwright.intake.MakeFile;

/**
 * One way to change a make, by a whole number of the steps that a maker uses (1 mm, 1 %).
 *
 * @param name of the way, without an amount; unique
 * @param most steps that may be taken; 1 for a choice that is made or not
 * @param upTo in words, for a way that did not help: "up to 30 mm more at the knee"
 * @param effort how much is asked of the maker; small is tried and offered first
 * @param words what to do, with its amount
 * @param way how the amount that will do can be guessed
 * @param redraft whether the draft sees it; what only the fit check reads is judged on the same pattern
 * @param make the changed make; empty where the make file's own rules would refuse it
 */
record ChangeLever(
        String name,
        int most,
        String upTo,
        IntToDoubleFunction effort,
        IntFunction<String> words,
        Way way,
        boolean redraft,
        IntFunction<Optional<MakeFile>> make) {

    /** Those whose amount follows from a limit of the fit check, and all others. */
    enum Way {
        MORE_ACROSS,
        MORE_ALONG,
        WIDER,
        RECOVERING,
        LOWER_BAND,
        OTHER
    }

    /** One that the draft sees. */
    ChangeLever(
            String name,
            int most,
            String upTo,
            IntToDoubleFunction effort,
            IntFunction<String> words,
            IntFunction<Optional<MakeFile>> make) {
        this(name, most, upTo, effort, words, Way.OTHER, true, make);
    }

    ChangeLever by(Way other) {
        return new ChangeLever(name, most, upTo, effort, words, other, redraft, make);
    }

    /** One that only the fit check reads. */
    ChangeLever judgedOnly() {
        return new ChangeLever(name, most, upTo, effort, words, way, false, make);
    }

    /** Made or not made. */
    static ChangeLever choice(String words, double effort, Optional<MakeFile> changed) {
        return new ChangeLever(words, 1, words, n -> effort, n -> words, n -> changed);
    }
}
