package stretchwright.make;

import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** What this room tells: keys of make/words.properties with what fills their gaps. */
final class Tell {
    private Tell() {}

    static Said said(String key, Part... parts) {
        return Said.of("make", key, parts);
    }
}
