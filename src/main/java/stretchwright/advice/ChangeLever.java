package stretchwright.advice;

import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;
import stretchwright.ground.Said;
import stretchwright.intake.MakeFile;

/**
 * One way to change a make, by a whole number of the steps that a maker uses (1 mm, 1 %).
 *
 * @param most steps that may be taken; 1 for a choice that is made or not
 * @param upTo for a way that did not help: "up to 30 mm more at the knee"; no two ways of a make say the same
 * @param effort how much is asked of the maker; small is tried and offered first
 * @param words what to do, with its amount
 * @param way how the amount that will do can be guessed
 * @param redraft whether the draft sees it; what only the fit check reads is judged on the same pattern
 * @param make the changed make; empty where the make file's own rules would refuse it
 */
record ChangeLever(
        int most,
        Said upTo,
        IntToDoubleFunction effort,
        IntFunction<Said> words,
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
        HIGHER_BACK,
        OTHER
    }

    /** One that the draft sees. */
    ChangeLever(
            int most,
            Said upTo,
            IntToDoubleFunction effort,
            IntFunction<Said> words,
            IntFunction<Optional<MakeFile>> make) {
        this(most, upTo, effort, words, Way.OTHER, true, make);
    }

    ChangeLever by(Way other) {
        return new ChangeLever(most, upTo, effort, words, other, redraft, make);
    }

    /** One that only the fit check reads. */
    ChangeLever judgedOnly() {
        return new ChangeLever(most, upTo, effort, words, way, false, make);
    }

    /** Made or not made. */
    static ChangeLever choice(Said words, double effort, Optional<MakeFile> changed) {
        return new ChangeLever(1, words, n -> effort, n -> words, n -> changed);
    }
}
