package stretchwright.workroom;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stretchwright.workroom.store.Store;
import stretchwright.workroom.store.Thing;

/**
 * Where the sewing of a make was left: what is next, by its number and by its name, so that the place is found again where a changed
 * plan counts otherwise.
 *
 * @param next number of the step that is next; one more than there are when all are done
 * @param setUp whether its machine is still to be set up
 * @param steps of the plan
 * @param minutes that are left
 * @param name of the next step; empty when all are done
 */
public record SewingPlace(int next, boolean setUp, int steps, long minutes, String name) {
    /** The values in their order; 1 where the machine is still to be set up, else 0. */
    private static final Pattern REMEMBERED = Pattern.compile("([0-9]{1,3}) ([01]) ([0-9]{1,3}) ([0-9]{1,6}) ?(.*)");

    /** Of a make; empty where its sewing has not begun. */
    public static Optional<SewingPlace> of(Store store, Thing make) {
        return Remembered.of(store, make, Remembered.SEWING).flatMap(SewingPlace::of);
    }

    /** As it is remembered; empty where nothing is, or nothing that can be read. */
    public static Optional<SewingPlace> of(String text) {
        Matcher m = REMEMBERED.matcher(text);
        return m.matches()
                ? Optional.of(new SewingPlace(
                        Integer.parseInt(m.group(1)),
                        m.group(2).equals("1"),
                        Integer.parseInt(m.group(3)),
                        Long.parseLong(m.group(4)),
                        m.group(5)))
                : Optional.empty();
    }

    /** The text to remember. */
    public String text() {
        return String.join(
                " ", String.valueOf(next), setUp ? "1" : "0", String.valueOf(steps), String.valueOf(minutes), name);
    }

    /** Whether all are done. */
    public boolean isEnded() {
        return next > steps;
    }

    /** Whether anything is done and something is left. */
    public boolean isUnderWay() {
        return !isEnded() && (next > 1 || !setUp);
    }
}
