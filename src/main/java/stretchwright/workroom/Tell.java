package stretchwright.workroom;

import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.intake.Echo;

/** What this room tells: keys of workroom/words.properties with what fills their gaps. */
final class Tell {
    private Tell() {}

    static Said said(String key, Part... parts) {
        return Said.of("workroom", key, parts);
    }

    /** A name, in quotes and never at length. */
    static Part quoted(String name) {
        return Part.text(Echo.quoted(name));
    }
}
