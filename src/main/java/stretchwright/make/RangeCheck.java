package stretchwright.make;

import java.util.Locale;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** What is wrong with a number as it was written and read; null where nothing is. Promises words for every text. */
final class RangeCheck {
    private RangeCheck() {}

    /**
     * @param value as read, or empty
     * @param what it should be, such as "a length"
     */
    static @Nullable String problem(String text, OptionalDouble value, String what, Limits.Range range) {
        String lower = text.toLowerCase(Locale.ROOT);
        if (lower.matches("[+-]?\\.?(inf|infinity|nan)\\b.*")) {
            return Echo.quoted(text) + " cannot be measured.";
        }
        if (value.isEmpty()) {
            return Echo.quoted(text) + " is not " + what + ".";
        }
        double v = value.getAsDouble();
        if (v < 0) {
            return Echo.quoted(text) + " is negative.";
        }
        if (v == 0 && range.least() > 0) {
            return Echo.quoted(text) + " is zero.";
        }
        return range.holds(v) ? null : Echo.quoted(text) + " is out of range.";
    }
}
