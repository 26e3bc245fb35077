package stretchwright.draft;

import java.util.Locale;
import stretchwright.ground.Findings;

/** Names measures, or what is asked for, that are at odds. */
final class Odds {
    private Odds() {}

    static void at(Findings findings, String key, String remedy, String format, Object... values) {
        findings.add(key, String.format(Locale.ROOT, format, values), remedy);
    }
}
