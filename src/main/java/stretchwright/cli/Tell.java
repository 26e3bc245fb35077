package stretchwright.cli;

import java.util.List;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** What the commands tell: keys of cli/words.properties with what fills their gaps. */
final class Tell {
    private Tell() {}

    static Said said(String key, Part... parts) {
        return Said.of("cli", key, parts);
    }

    /** What was typed, in quotes. */
    static Part quoted(String text) {
        return Part.text("\"" + text + "\"");
    }

    /** Names and words that are the same in every language: "a, b, c". */
    static Part words(List<String> words) {
        return Part.listed(Part.Join.COMMA, words.stream().map(Part::text).toList());
    }

    /** How many findings there are: "1 finding". */
    static Said findings(int count) {
        return count == 1 ? Tell.said("findings.one") : Tell.said("findings.count", Part.count(count));
    }
}
