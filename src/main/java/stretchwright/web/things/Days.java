package stretchwright.web.things;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import stretchwright.ground.Part;
import stretchwright.ground.Voice;

/** Days as one says them: how long ago is what counts. */
final class Days {
    private Days() {}

    /** "October", or "October 2024". */
    static String month(LocalDate day, LocalDate today) {
        String pattern = day.getYear() == today.getYear() ? "LLLL" : "LLLL uuuu";
        return DateTimeFormatter.ofPattern(pattern, Locale.forLanguageTag(Voice.tag()))
                .format(day);
    }

    /** "4 months ago: measure again". */
    static String due(LocalDate day, LocalDate today) {
        long months = ChronoUnit.MONTHS.between(day, today);
        return Held.plain("things.due", Part.count(months));
    }
}
