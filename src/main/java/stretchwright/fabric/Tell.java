package stretchwright.fabric;

import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** What this room tells: keys of fabric/words.properties with what fills their gaps. */
final class Tell {
    private Tell() {}

    static Said said(String key, Part... parts) {
        return Said.of("fabric", key, parts);
    }
}
