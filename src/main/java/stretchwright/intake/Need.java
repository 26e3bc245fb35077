package stretchwright.intake;

import stretchwright.ground.Said;

/**
 * Whether a key must be there.
 *
 * @param always wherever its section is
 * @param oneOf of keys that stand for each other one must be there: the name they share; empty otherwise
 * @param when key of the sentence that says when it is needed; empty where it never is
 * @param standsIn whether it may stand for one of each such group of its section
 */
public record Need(boolean always, String oneOf, String when, boolean standsIn) {
    static final Need FREE = new Need(false, "", "", false);
    static final Need NEEDED = new Need(true, "", "needed.yes", false);
    static final Need STANDS_IN = new Need(false, "", "", true);

    /** What is said of a key that must be there and is not. */
    static Said lack() {
        return Tell.said("missing");
    }

    /** Whether that is what is wrong. */
    public static boolean isLack(Said wrong) {
        return wrong.sameKey(lack());
    }

    static Need oneOf(String group) {
        return new Need(false, group, "needed.one-of", false);
    }

    /** Unless what stands in for it is there; whoever builds the value asks for it. */
    static Need unlessUsual(String group) {
        return new Need(false, group, "needed.unless-usual", false);
    }

    /** Only with some other key; whoever builds the value asks for it then. */
    static Need when(String key) {
        return new Need(false, "", key, false);
    }
}
