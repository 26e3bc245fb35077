package stretchwright.intake;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stretchwright.ground.Numbers;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;

/** Examples that are true in every unit: lengths stand in them in mm between braces, "{1470}". */
final class Example {
    private static final Pattern LENGTH = Pattern.compile("\\{(-?[0-9.]+)}");
    private static final int SIXTEENTHS = 16;

    private Example() {}

    /** With lengths as bare numbers of this unit; without one they carry their own. */
    static String of(String example, Optional<Unit> unit) {
        return LENGTH.matcher(example)
                .replaceAll(m -> Matcher.quoteReplacement(length(Double.parseDouble(m.group(1)), unit)));
    }

    /** To the millimetre, or as a tape in inches has it. */
    private static String length(double mm, Optional<Unit> unit) {
        if (unit.isEmpty()) {
            return Numbers.plain(Unit.CM.fromMm(mm)) + " " + Unit.CM.symbol();
        }
        return unit.get() == Unit.IN
                ? (mm < 0 ? "-" : "") + Voice.parts(Math.round(Math.abs(Unit.IN.fromMm(mm)) * SIXTEENTHS), SIXTEENTHS)
                : Numbers.plain(unit.get().fromMm(mm));
    }
}
