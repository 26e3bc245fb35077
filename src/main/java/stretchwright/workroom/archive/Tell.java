package stretchwright.workroom.archive;

import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.intake.Echo;

/** What this room tells: keys of workroom/words.properties with what fills their gaps. */
final class Tell {
    private Tell() {}

    static Said said(String key, Part... parts) {
        return Said.of("workroom", key, parts);
    }

    /** What a file holds, in quotes and never at length. */
    static Part quoted(String text) {
        return Part.text(Echo.quoted(text));
    }
}
