package stretchwright.intake;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import stretchwright.ground.Said;

/** Whether a value that was read from a text can be one: a number, not below zero, within its range. */
final class InRange {
    private final Spot at;
    private final String text;
    private final Range range;

    InRange(Spot at, String text, Range range) {
        this.at = at;
        this.text = text;
        this.range = range;
    }

    /** The value where it is within its range; else empty, and a finding. */
    Optional<Double> of(OptionalDouble value, boolean signed, Said isNot, Said write, Supplier<Said> allowed) {
        Said wrong = wrong(value, signed, isNot);
        if (wrong.isNothing()) {
            return Optional.of(value.getAsDouble());
        }
        at.add(wrong, value.isEmpty() ? write : allowed.get());
        return Optional.empty();
    }

    private Said wrong(OptionalDouble value, boolean signed, Said isNot) {
        if (text.toLowerCase(Locale.ROOT).matches("[+-]?\\.?(inf|infinity|nan)\\b.*")) {
            return Tell.said("amount.endless", Tell.quoted(text));
        }
        if (value.isEmpty()) {
            return isNot;
        }
        double v = value.getAsDouble();
        if (v < 0 && !signed) {
            return Tell.said("amount.negative", Tell.quoted(text));
        }
        if (v == 0 && range.least() > 0) {
            return Tell.said("amount.zero", Tell.quoted(text));
        }
        return range.holds(v) ? Said.NOTHING : Tell.said("amount.out", Tell.quoted(text));
    }
}
