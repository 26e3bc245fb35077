package stretchwright.intake;

import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** What this room says: a key of its sentences (stretchwright/intake/words.properties) and what fills the gaps. */
final class Tell {
    private static final String ROOM = "intake";

    private Tell() {}

    static Said said(String key, Part... parts) {
        return Said.of(ROOM, key, parts);
    }

    /** What the file holds, in quotes and never at length. */
    static Part quoted(String text) {
        return Part.text(Echo.quoted(text));
    }

    /** Words of the make file, which are the same in every language: "a, b, c". */
    static Part words(java.util.Collection<String> words) {
        return Part.listed(Part.Join.COMMA, words.stream().map(Part::text).toList());
    }
}
