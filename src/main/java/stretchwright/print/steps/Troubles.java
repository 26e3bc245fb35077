package stretchwright.print.steps;

import java.util.List;
import stretchwright.print.kit.Phrases;

/**
 * When the machine misbehaves: one change at a time, a scrap test after each.
 *
 * <p>Gathered from what makers report on public pages; where a row says so it is common practice without a source. The
 * starting numbers are starting steps, not limits.
 */
final class Troubles {
    /** @param common whether all of it is common practice, no source */
    record Row(String symptom, String first, String then, boolean common) {}

    private Troubles() {}

    static List<Row> rows() {
        return List.of(
                new Row(
                        Phrases.of("trouble.waves.see"),
                        Phrases.of("trouble.waves.first"),
                        Phrases.of("trouble.waves.then"),
                        false),
                new Row(
                        Phrases.of("trouble.skips.see"),
                        Phrases.of("trouble.skips.first"),
                        Phrases.of("trouble.skips.then"),
                        false),
                new Row(
                        Phrases.of("trouble.cover-skips.see"),
                        Phrases.of("trouble.cover-skips.first"),
                        Phrases.of("trouble.cover-skips.then"),
                        false),
                new Row(
                        Phrases.of("trouble.thread-breaks.see"),
                        Phrases.of("trouble.thread-breaks.first"),
                        Phrases.of("trouble.thread-breaks.then"),
                        false),
                new Row(
                        Phrases.of("trouble.gapes.see"),
                        Phrases.of("trouble.gapes.first"),
                        Phrases.of("trouble.gapes.then"),
                        true),
                new Row(
                        Phrases.of("trouble.ridge.see"),
                        Phrases.of("trouble.ridge.first"),
                        Phrases.of("trouble.ridge.then"),
                        false),
                new Row(
                        Phrases.of("trouble.holes.see"),
                        Phrases.of("trouble.holes.first"),
                        Phrases.of("trouble.holes.then"),
                        false),
                new Row(
                        Phrases.of("trouble.curl.see"),
                        Phrases.of("trouble.curl.first"),
                        Phrases.of("trouble.curl.then"),
                        false),
                new Row(
                        Phrases.of("trouble.bulky.see"),
                        Phrases.of("trouble.bulky.first"),
                        Phrases.of("trouble.bulky.then"),
                        true));
    }
}
