package stretchwright.lay.nest;

import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** What this room tells: keys of lay/nest/words.properties with what fills their gaps. */
final class Tell {
    private Tell() {}

    static Said said(String key, Part... parts) {
        return Said.of("lay.nest", key, parts);
    }

    static Part count(long count) {
        return Part.count(count);
    }

    /** A length in units of the instance's own. */
    static Part units(double length) {
        return Part.text(Double.toString(length));
    }
}
